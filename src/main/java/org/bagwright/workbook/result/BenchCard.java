package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.Broken;
import org.bagwright.domain.text.ListText;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;

/** The bench card of one golfer. */
final class BenchCard {
    /** What to mind at the bench and afterwards, as common practice and the rules of the game have it. */
    static final List<String> CAUTIONS = List.of(
            "Wear eye protection whenever you bend or drill.",
            "Bend a hosel only if its maker allows it; a degree weaker adds a degree of bounce (common practice).",
            "Tighten a sleeve bolt with a torque tool set to the maker's stated value, and stop at the click.",
            "Epoxy: wear gloves, work in fresh air, and let it cure fully before a ball is hit.",
            "After the first shots check that nothing has worked loose, and gauge again.",
            "A club whose loft or lie was changed on purpose during a round may not be used in the rest of it"
                    + " (Rules of Golf, 4.1a(3)).",
            "The makers' instructions, local rules and licensed practice come first.");

    private static final String PLUS_MINUS = "\u00b1 ";

    private final SheetPen pen;
    private final TablePen table;
    private final Book book;
    private final BagResult bag;

    BenchCard(SheetPen pen, Book book, BagResult bag) {
        this.pen = pen;
        this.table = new TablePen(pen, book.settings().units());
        this.book = book;
        this.bag = bag;
    }

    /** Writes the card from a row on and gives the first row after it. */
    int write(int row) {
        head(row);
        List<String> headings = Arrays.stream(BenchColumn.values())
                .map(column -> column.isDistance() ? table.inDistance(column.heading()) : column.heading())
                .toList();
        table.headings(row + 3, headings, 42);
        tolerances(row + 4);
        int next = row + 5;
        for (int index = 0; index < bag.options().slots().size(); index++) {
            BenchRows rows = new BenchRows(pen, book, bag, index);
            next = rows.hasClub() ? rows.write(next) : next;
        }
        List<String> broken = bag.broken(bag.planned(), book.settings()).stream()
                .map(Broken::inWords)
                .toList();
        if (!broken.isEmpty()) {
            next = paragraphs(next, "What the plan does not keep", broken);
        }
        return paragraphs(
                paragraphs(next, "What the figures mean", meanings()), "Cautions", List.of(String.join(" ", CAUTIONS)));
    }

    private void head(int row) {
        String hand = bag.golfer().hand() == Hand.LEFT ? " (left-handed)" : "";
        pen.text(row, 0, Role.TITLE, "Bench card: " + bag.golfer().name() + hand);
        pen.height(row, 24);
        pen.text(row + 1, 0, Role.PLAIN, book.settings().title().orElse(""));
        toFillIn(row + 1, "Date");
        toFillIn(row + 2, "Done by");
        pen.text(row + 2, 0, Role.PLAIN, verdict());
        pen.height(row + 1, 18);
        pen.height(row + 2, 18);
    }

    private String verdict() {
        Set<String> broken = bag.broken(bag.planned());
        if (!broken.isEmpty()) {
            return "Not met by the plan: " + ListText.allOf(broken) + ".";
        }
        int changes = bag.changesOf(bag.planned());
        return changes == 0
                ? "Nothing to change: today's bag is the plan."
                : "To change: " + changes + (changes == 1 ? " item." : " items.")
                        + " The plan meets every must and limit.";
    }

    /** A label and a line to write on by hand. */
    private void toFillIn(int row, String label) {
        int column = BenchColumn.LIE.ordinal();
        pen.text(row, column++, Role.PLAIN, label);
        while (column <= BenchColumn.LAST) {
            pen.blank(row, column++, Role.FILL_IN);
        }
    }

    private void tolerances(int row) {
        for (int column = 0; column <= BenchColumn.LAST; column++) {
            pen.blank(row, column, Role.GROUP);
        }
        pen.text(row, 0, Role.GROUP, "Good enough within" + musts());
        for (BenchColumn column : BenchColumn.values()) {
            column.measure()
                    .ifPresent(measure ->
                            pen.text(row, column.ordinal(), Role.GROUP_COUNT, PLUS_MINUS + tolerance(measure)));
        }
        pen.height(row, 15);
    }

    private String tolerance(Measure measure) {
        double tolerance = book.aims().of(measure).toleranceMeasureUnits();
        return Numbers.trimmed(measure.unit().shown(tolerance, book.settings()), 2);
    }

    private List<String> meanings() {
        return List.of("then: what gauge, eye and scale should show after the work, and the carry and gap to expect."
                + " Further off than good enough (the tolerances on the sheet Aims): set or bend again. sits: where the"
                + " leading edge points when the head rests by itself. Clockwise: as seen from the grip end, looking down"
                + " the shaft.");
    }

    /** The measures that must be inside their tolerance. */
    private String musts() {
        List<String> musts = Arrays.stream(BenchColumn.values())
                .flatMap(column -> column.measure().stream())
                .filter(measure -> book.aims().of(measure).isHard())
                .map(Measure::label)
                .toList();
        return musts.isEmpty() ? "" : "; a must: " + ListText.allOf(musts);
    }

    private int paragraphs(int row, String heading, List<String> texts) {
        table.band(row, BenchColumn.LAST, heading);
        int next = row + 1;
        for (String text : texts) {
            pen.text(next, 0, Role.WRAPPED, text);
            pen.merge(next, next, 0, BenchColumn.LAST);
            pen.height(next++, TablePen.heightPoints(text, BenchColumn.ALL_CHARS));
        }
        return next;
    }
}
