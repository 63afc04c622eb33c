package org.bagwright.workbook.pen;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.Broken;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.Units;

/** What result sheets share: a title, headings, bands with a name, numbers that may be missing, the end of the sheet. */
public final class TablePen {
    /** Where most sheets have their headings. */
    public static final int HEADING_ROW = 3;

    public static final String POINTS = "0.00";
    public static final String SIGNED_POINTS = "+0.00;-0.00;0.00";
    /** Hard breaks in tolerances; none is a word, so that a broken must catches the eye. */
    private static final String BREAKS = "0.00;-0.00;\"none\"";

    /** As an arrow that no line ends inside. */
    private static final String ARROW = "\u2192";

    private static final double BETWEEN_POINTS = 7;
    private static final double ABOUT_POINTS = 16;

    private static final double BREAK_THOUSANDTHS = 1000;

    private final SheetPen pen;
    private final LengthUnit distance;

    public TablePen(SheetPen pen, Units units) {
        this.pen = pen;
        this.distance = units.distance();
    }

    public void title(String title, String about) {
        pen.text(0, 0, Role.TITLE, title);
        pen.height(0, SheetPen.TITLE_ROW_POINTS);
        pen.text(1, 0, Role.FAINT, about);
        pen.height(1, ABOUT_POINTS);
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

    public void headings(int row, List<String> headings, double heightPoints) {
        for (int column = 0; column < headings.size(); column++) {
            pen.text(row, column, Role.HEADING, headings.get(column));
        }
        pen.height(row, heightPoints);
    }

    public void widths(double... widthsChars) {
        for (int column = 0; column < widthsChars.length; column++) {
            pen.width(column, widthsChars[column]);
        }
    }

    /** The rows of one golfer. */
    public interface GolferRows {
        /** Writes them from a row on, says what stays together on a page, and gives the first free row. */
        int write(BagResult bag, int row, PageFill page);
    }

    /** Writes one golfer under the other on upright pages, as many on a page as fit, and gives the last row. */
    public int golfers(List<BagResult> bags, int lastColumn, GolferRows rows) {
        PageSetup setup = PageSetup.upright(HEADING_ROW, 0, lastColumn);
        double headingPoints = pen.sheet().getRow(HEADING_ROW).getHeightInPoints();
        PageFill page = new PageFill(pen.sheet(), setup.rowsPoints(pen.sheet()) - headingPoints);
        page.keepTogether(0, HEADING_ROW);
        int row = HEADING_ROW + 1;
        for (BagResult bag : bags) {
            row = rows.write(bag, row, page);
            between(row++);
        }
        return row - 2;
    }

    /** A low row between two tables. */
    public void between(int row) {
        pen.height(row, BETWEEN_POINTS);
    }

    /** Keeps headings and first columns in view, and sets up the print down to a row. */
    public void finish(int fixedColumns, int lastRow, int lastColumn) {
        pen.sheet().createFreezePane(fixedColumns, HEADING_ROW + 1);
        pen.print(PageSetup.landscape(HEADING_ROW, lastRow, lastColumn));
    }

    /** As {@link #finish} on upright pages. */
    public void finishUpright(int fixedColumns, int lastRow, int lastColumn) {
        pen.sheet().createFreezePane(fixedColumns, HEADING_ROW + 1);
        pen.print(PageSetup.upright(HEADING_ROW, lastRow, lastColumn));
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

    /** What a plan breaks, to go after its description; empty if it breaks nothing. */
    public static String missed(List<Broken> broken) {
        return broken.isEmpty()
                ? ""
                : "; not kept: " + broken.stream().map(Broken::inWords).collect(Collectors.joining("; "));
    }

    /** A text with an arrow in place of {@code ->}. */
    public static String arrows(String text) {
        return text.replace("->", ARROW);
    }

    /** How high a row must be for a text that is wrapped in a width, points. */
    public static double heightPoints(String text, double widthChars) {
        return new CellText(text).heightPoints(widthChars);
    }
}
