package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.Broken;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.schema.ResultSheet;

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
        List<String> headings =
                Arrays.stream(BenchColumn.values()).map(BenchColumn::heading).toList();
        table.headings(row + 4, headings, 30);
        return cautions(broken(staying(work(row + 5) + 1)) + 1);
    }

    private void head(int row) {
        String hand = bag.golfer().hand() == Hand.LEFT ? " (left-handed)" : "";
        pen.text(row, 0, Role.TITLE, "Bench card: " + bag.golfer().name() + hand);
        pen.height(row, 24);
        pen.text(row + 1, 0, Role.PLAIN, book.settings().title().orElse(""));
        toFillIn(row + 1, "Date");
        toFillIn(row + 2, "Done by");
        pen.text(row + 2, 0, Role.FAINT, ResultSheet.REBUILT);
        pen.height(row + 1, 22);
        pen.height(row + 2, 22);
        pen.height(row + 3, 8);
    }

    /** A label and a line to write on by hand. */
    private void toFillIn(int row, String label) {
        int column = BenchColumn.LOFT.ordinal();
        pen.text(row, column++, Role.PLAIN, label);
        while (column <= BenchColumn.LAST) {
            pen.blank(row, column++, Role.TEXT);
        }
    }

    private List<OptionChange> changes() {
        List<Option> today = bag.optionsOf(bag.today());
        List<Option> planned = bag.optionsOf(bag.planned());
        List<OptionChange> changes = new ArrayList<>();
        for (int slot = 0; slot < today.size(); slot++) {
            changes.add(new OptionChange(today.get(slot), planned.get(slot)));
        }
        return changes;
    }

    /** The rows of everything that is done; gives the first free row. */
    private int work(int row) {
        int next = row;
        for (OptionChange change : changes()) {
            if (!change.isNone()) {
                next = new BenchRows(pen, book, change).write(next);
            }
        }
        if (next == row) {
            pen.text(next++, BenchColumn.CLUB.ordinal(), Role.PLAIN, "Nothing to change: today's bag is the plan.");
        }
        return next;
    }

    private int staying(int row) {
        List<String> clubs = changes().stream()
                .filter(change -> change.isNone() && !change.to().isEmpty())
                .map(change -> change.to().clubText())
                .toList();
        if (clubs.isEmpty()) {
            return row;
        }
        wrapped(row, "No change: " + String.join(", ", clubs) + ".");
        return row + 1;
    }

    /** What the plan does not keep, so that whoever works from the card can ask first. */
    private int broken(int row) {
        int next = row;
        for (Broken rule : bag.broken(bag.planned(), book.settings())) {
            wrapped(next++, "Not kept: " + rule.inWords());
        }
        return next;
    }

    private int cautions(int row) {
        table.band(row, BenchColumn.LAST, "Cautions");
        int next = row + 1;
        for (String caution : CAUTIONS) {
            wrapped(next++, caution);
        }
        return next;
    }

    private void wrapped(int row, String text) {
        pen.text(row, 0, Role.WRAPPED, text);
        pen.merge(row, row, 0, BenchColumn.LAST);
        pen.height(row, TablePen.heightPoints(text, BenchColumn.ALL_CHARS));
    }
}
