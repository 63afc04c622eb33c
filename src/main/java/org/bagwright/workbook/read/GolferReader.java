package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.bagwright.domain.book.GapWish;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.club.Limits;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.GolferColumn;

/** Reads the sheet Golfers. */
final class GolferReader {
    private static final Map<String, Hand> HANDS = Map.of(
            "r", Hand.RIGHT,
            "right", Hand.RIGHT,
            "rh", Hand.RIGHT,
            "right-handed", Hand.RIGHT,
            "l", Hand.LEFT,
            "left", Hand.LEFT,
            "lh", Hand.LEFT,
            "left-handed", Hand.LEFT);
    private static final Limit USUAL_LEAN_DEG = new Limit(0, 10, "degrees");
    private static final Map<String, GapWish> GAP_WORDS = Map.of("even", GapWish.EVEN, "today", GapWish.TODAY);

    private final InputTable table;
    private final Findings findings;
    private final NameIndex names = new NameIndex();
    private final List<Filled> filled = new ArrayList<>();

    /**
     * A row and its golfer.
     *
     * @param row the row
     * @param golfer the golfer whom it gives
     */
    record Filled(InputRow row, Golfer golfer) {}

    private GolferReader(InputTable table, Findings findings) {
        this.table = table;
        this.findings = findings;
    }

    static GolferReader read(InputTable table, Findings findings) {
        GolferReader reader = new GolferReader(table, findings);
        if (table.requireColumns(List.of(GolferColumn.GOLFER))) {
            reader.readRows();
        }
        table.tellUnread();
        return reader;
    }

    /** Every name on the sheet, also of rows with something wrong in them. */
    NameIndex names() {
        return names;
    }

    List<Golfer> golfers() {
        return filled.stream().map(Filled::golfer).toList();
    }

    /** The rows of the golfers. */
    List<Filled> filled() {
        return filled;
    }

    private void readRows() {
        sayAssumed(GolferColumn.DRIVER_SPEED);
        List<InputRow> rows = table.rows();
        if (rows.isEmpty()) {
            findings.problem(
                    table.cellUnder(GolferColumn.GOLFER),
                    "No golfer: every row under the headings is empty. Enter a name here.");
        }
        rows.forEach(this::readRow);
    }

    private void sayAssumed(Column column) {
        if (!table.has(column)) {
            findings.missing(
                    table.firstHeadingCell(),
                    "the column " + column.header() + " is missing; head speeds are assumed.");
        }
    }

    private void readRow(InputRow row) {
        Optional<String> name = name(row);
        Hand hand =
                row.choice(GolferColumn.HAND, HANDS, GolferColumn.HAND.words()).orElse(Hand.RIGHT);
        Golfer.HeadSpeeds speeds =
                new Golfer.HeadSpeeds(row.number(GolferColumn.DRIVER_SPEED), row.number(GolferColumn.IRON_SPEED));
        Golfer.Address address = address(row);
        GapWish gapWish = gapWish(row);
        Limits limits = new LimitReader(row).ofGolfer();
        OptionalInt changes = row.whole(GolferColumn.MOST_CHANGES);
        if (!row.isSpoilt()) {
            String cell = row.cell(GolferColumn.GOLFER);
            sayOddLean(row, address.leanDeg());
            Golfer golfer = new Golfer(name.orElseThrow(), hand, speeds, address, gapWish, limits, changes, cell);
            filled.add(new Filled(row, golfer));
        }
    }

    private Optional<String> name(InputRow row) {
        row.require(GolferColumn.GOLFER);
        Optional<String> name = row.text(GolferColumn.GOLFER);
        if (name.isEmpty()) {
            names.missesOne();
        }
        name.flatMap(text -> names.add(text, row.cell(GolferColumn.GOLFER)))
                .ifPresent(first -> row.problem(
                        GolferColumn.GOLFER,
                        "golfer must have one row only, found \"" + name.get() + "\" again, first in " + first + "."));
        return name;
    }

    private static Golfer.Address address(InputRow row) {
        double leanDeg = row.number(GolferColumn.SHAFT_LEAN).orElse(0);
        boolean squares = row.yesNo(GolferColumn.SQUARES_FACE).orElse(true);
        boolean aligned = !row.yesNo(GolferColumn.KEEP_SHAFT_TURNED).orElse(true);
        return new Golfer.Address(leanDeg, squares, aligned);
    }

    /** Hands behind the ball are as rare as hands far ahead of it, at address; common practice. */
    private void sayOddLean(InputRow row, double leanDeg) {
        if (!USUAL_LEAN_DEG.holds(leanDeg)) {
            String maybe = USUAL_LEAN_DEG.holds(-leanDeg) ? Numbers.trimmed(-leanDeg) + "?" : "it is mistyped.";
            findings.warning(
                    row.cell(GolferColumn.SHAFT_LEAN),
                    "Shaft lean that golfers hardly have at address (0 to 10 degrees, toward the target is positive), found "
                            + Numbers.trimmed(leanDeg) + ". Maybe " + maybe);
        }
    }

    private static GapWish gapWish(InputRow row) {
        return row.numberOr(GolferColumn.GAP_WISH, GAP_WORDS, GapWish::ofM).orElse(GapWish.EVEN);
    }
}
