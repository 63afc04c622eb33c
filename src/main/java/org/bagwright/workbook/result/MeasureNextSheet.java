package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.CarryBand;
import org.bagwright.domain.plan.ChoiceSureness;
import org.bagwright.domain.plan.MeasureNext;
import org.bagwright.workbook.pen.PageFill;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;
import org.bagwright.workbook.schema.ResultSheet;

/** The sheet Measure next: golfer by golfer what to measure next, and how sure each planned choice is. */
final class MeasureNextSheet {
    static final String NAME = "Measure next";
    static final int WHAT = 0;
    static final int WORTH = 1;
    static final int WORDS = 2;
    static final int CHOICE = 0;
    static final int CASES = 1;
    static final int NEXT = 2;
    static final int NEXT_CASES = 3;
    static final int CARRY_RANGE = 4;
    static final int CHANGE_RANGE = 5;
    static final int ORIGIN = 6;

    private static final double TEXT_CHARS = 28.75;
    private static final double ORIGIN_CHARS = 33.5;
    /** Rows that are not divided by the end of a page: headings and two choices. */
    private static final int ROWS_TOGETHER = 3;

    private static final List<String> NOTES = List.of(
            "Likely cases: carries drawn from what is known of the golfer, each planned again.",
            "+/-: 8 in 10 likely values are within it. Change: of the carry, compared with today.");

    private final SheetPen pen;
    private final TablePen table;
    private final BookResult result;

    MeasureNextSheet(SheetPen pen, BookResult result) {
        this.pen = pen;
        this.table = new TablePen(pen, result.book().settings().units());
        this.result = result;
    }

    void write() {
        table.title(
                NAME,
                "Which shots or readings would make the plan better, and how sure each choice is. "
                        + ResultSheet.REBUILT);
        table.headings(
                TablePen.HEADING_ROW,
                List.of("Measure next", "Worth [points]", "What it would do", "", "", "", ""),
                32);
        table.widths(TEXT_CHARS, 9, TEXT_CHARS, 7, 7.5, 7.5, ORIGIN_CHARS);
        int last = table.golfers(result.bags(), ORIGIN, this::golfer);
        for (String note : NOTES) {
            pen.text(++last, 0, Role.FAINT, note);
        }
        table.finishUpright(0, last, ORIGIN);
    }

    private int golfer(BagResult bag, int row, PageFill page) {
        table.band(row, ORIGIN, bag.golfer().name());
        Optional<BagOutlook> outlook = bag.outlook();
        if (outlook.isEmpty()) {
            return row + 1;
        }
        int next = advice(outlook.get().next(), row + 1);
        page.keepTogether(row, next);
        table.between(next);
        int end = choices(bag, outlook.get(), next + 1);
        page.mayDivide(next + 1, next + 1 + ROWS_TOGETHER, end);
        return end;
    }

    private int advice(MeasureNext next, int row) {
        int free = row;
        for (MeasureNext.Advice advice : next.advice()) {
            height(free, advice.inWords(), advice.worth().words());
            pen.text(free, WHAT, Role.CELL, advice.inWords());
            pen.number(free, WORTH, Role.NUMBER, TablePen.POINTS, advice.worthPoints());
            pen.text(free++, WORDS, Role.CELL, advice.worth().words());
        }
        if (next.enough()) {
            pen.text(free++, WHAT, Role.PLAIN, "All clubs have shots: " + MeasureNext.ENOUGH + ".");
        }
        return free;
    }

    private int choices(BagResult bag, BagOutlook outlook, int row) {
        choiceHeadings(row);
        int free = row + 1;
        for (ChoiceSureness choice : outlook.choices()) {
            choice(bag, choice, free);
            int slot = bag.options().slots().get(choice.index()).slot();
            average(
                    free++,
                    outlook.bands().stream()
                            .filter(band -> band.slot() == slot)
                            .map(CarryBand::average)
                            .findFirst());
        }
        return free;
    }

    private void choiceHeadings(int row) {
        List<String> headings = List.of(
                "Planned choice",
                "Best in 100 likely cases",
                "Most often best instead",
                "In 100 likely cases",
                table.inDistance("Carry +/-"),
                table.inDistance("Change +/-"),
                "Carry comes from");
        table.headings(row, headings, 42);
    }

    private void choice(BagResult bag, ChoiceSureness choice, int row) {
        SlotOptions slot = bag.options().slots().get(choice.index());
        int planned = bag.planned().chosen().get(choice.index());
        pen.text(row, CHOICE, Role.CELL, text(slot, planned));
        pen.number(row, CASES, Role.COUNT, "0", Math.rint(100 * choice.plannedRatio()));
        Optional<ChoiceSureness.Share> other = choice.best().stream()
                .filter(share -> share.option() != planned)
                .findFirst();
        String next = other.map(share -> text(slot, share.option())).orElse("");
        pen.text(row, NEXT, Role.CELL, next);
        height(row, text(slot, planned), next);
        table.number(
                row,
                NEXT_CASES,
                Role.COUNT,
                "0",
                other.map(share -> OptionalDouble.of(Math.rint(100 * share.caseRatio())))
                        .orElseGet(OptionalDouble::empty));
    }

    private static String text(SlotOptions slot, int option) {
        String words = new SlotChoice(slot, slot.options().get(option)).inWords();
        if (slot.options().get(option).isEmpty()) {
            return "Slot " + slot.slot() + ": " + words;
        }
        return slot.clubs().size() > 1 ? words : slot.main().name() + ": " + words;
    }

    private void average(int row, Optional<CarryBand.Average> average) {
        table.distance(row, CARRY_RANGE, Role.NUMBER, rangeM(average.map(CarryBand.Average::carrySdM)));
        table.distance(
                row,
                CHANGE_RANGE,
                Role.NUMBER,
                rangeM(average.map(CarryBand.Average::changeSdM)
                        .flatMap(sdM -> sdM.stream().boxed().findFirst())));
        String origin = average.map(CarryBand.Average::originInWords).orElse("");
        pen.text(row, ORIGIN, Role.CELL, origin);
        double heightPoints = TablePen.heightPoints(origin, ORIGIN_CHARS);
        pen.height(row, Math.max(heightPoints, pen.sheet().getRow(row).getHeightInPoints()));
    }

    private void height(int row, String one, String other) {
        pen.height(row, Math.max(TablePen.heightPoints(one, TEXT_CHARS), TablePen.heightPoints(other, TEXT_CHARS)));
    }

    private static OptionalDouble rangeM(Optional<Double> sdM) {
        return sdM.map(value -> OptionalDouble.of(CarryBand.EIGHT_OF_TEN * value))
                .orElseGet(OptionalDouble::empty);
    }
}
