package org.bagwright.workbook.pen;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.Units;

/** What the tables of several result sheets share: bands with a name, rows of headings, numbers that may be missing. */
public final class SheetBlock {
    public static final String POINTS = "0.00";
    public static final String SIGNED_POINTS = "+0.00;-0.00;0.00";
    /** Hard breaks in tolerances; none is a word, so that a broken must catches the eye. */
    static final String BREAKS = "0.00;-0.00;\"none\"";

    /** As an arrow that no line ends inside. */
    private static final String ARROW = "\u2192";

    private static final double LINE_HEIGHT_POINTS = 13.2;
    /** Letters are narrower than the digits by which widths are counted. */
    private static final double CHARS_PER_WIDTH = 1.25;

    private static final double BREAK_THOUSANDTHS = 1000;

    private final SheetPen pen;
    private final LengthUnit distance;

    public SheetBlock(SheetPen pen, Units units) {
        this.pen = pen;
        this.distance = units.distance();
    }

    /** A heading with the unit of distances in brackets. */
    public String inDistance(String heading) {
        return heading + " [" + distance.label() + "]";
    }

    /** A band across a table with a name in it. */
    public void band(int row, int lastColumn, String name) {
        for (int column = 1; column <= lastColumn; column++) {
            pen.blank(row, column, Role.GROUP);
        }
        pen.text(row, 0, Role.GROUP, name);
    }

    public void headings(int row, int firstColumn, List<String> headings, double heightPoints) {
        for (int index = 0; index < headings.size(); index++) {
            pen.text(row, firstColumn + index, Role.HEADING, headings.get(index));
        }
        pen.height(row, heightPoints);
    }

    public void widths(double... widthsChars) {
        for (int column = 0; column < widthsChars.length; column++) {
            pen.width(column, widthsChars[column]);
        }
    }

    public void number(int row, int column, Role role, String format, OptionalDouble value) {
        if (value.isPresent()) {
            pen.number(row, column, role, format, value.getAsDouble());
        } else {
            pen.blank(row, column, role);
        }
    }

    public void distance(int row, int column, Role role, OptionalDouble valueM) {
        number(
                row,
                column,
                role,
                "0.0",
                valueM.isPresent() ? OptionalDouble.of(distance.fromM(valueM.getAsDouble())) : OptionalDouble.empty());
    }

    public void breaks(int row, int column, Role role, long hardBreaks) {
        pen.number(row, column, role, BREAKS, hardBreaks / BREAK_THOUSANDTHS);
    }

    /** What a plan misses, to follow what is said of it; nothing if it misses nothing. */
    public static String missed(Collection<String> broken) {
        return broken.isEmpty() ? "" : "; misses: " + String.join(", ", broken);
    }

    /** A text with an arrow in place of {@code ->}. */
    public static String arrows(String text) {
        return text.replace("->", ARROW);
    }

    /** How high a row must be for a text that is wrapped in a width, points. */
    public static double heightPoints(String text, double widthChars) {
        double lines = text.lines()
                .mapToDouble(line -> Math.max(1, Math.ceil(line.length() / (CHARS_PER_WIDTH * (widthChars - 2)))))
                .sum();
        return 3 + LINE_HEIGHT_POINTS * Math.max(1, lines);
    }
}
