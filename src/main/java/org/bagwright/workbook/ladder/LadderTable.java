package org.bagwright.workbook.ladder;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.GapOutlook;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;
import org.bagwright.workbook.plan.PlanColumn;
import org.bagwright.workbook.plan.PlanQuantity;
import org.bagwright.workbook.plan.PlanRow;
import org.bagwright.workbook.plan.PlanSheet;
import org.bagwright.workbook.plan.PlanState;

/** On the sheet Ladder: carries and gaps of one golfer by slot, linked to the sheet Plan. */
final class LadderTable {
    static final int CARRY_COLUMN = 1;
    static final int GAP_NAME_COLUMN = 4;
    static final int GAP_COLUMN = 5;
    static final int WISH_COLUMN = 8;
    private static final int SURE_COLUMN = 9;
    private static final String DASH = " \u2013 ";

    private final SheetPen pen;
    private final TablePen table;
    private final LengthUnit distance;
    private final BagResult bag;
    private final boolean hasCandidates;
    private final int planRow;

    /** @param planRow the row of the golfer's first slot on the sheet Plan */
    LadderTable(SheetPen pen, Units units, BagResult bag, boolean hasCandidates, int planRow) {
        this.pen = pen;
        this.table = new TablePen(pen, units);
        this.distance = units.distance();
        this.bag = bag;
        this.hasCandidates = hasCandidates;
        this.planRow = planRow;
    }

    /** Writes from a row on: headings, then a row for each of these positions in the bag. */
    void write(int row, List<Integer> positions) {
        headings(row);
        for (int line = 0; line < positions.size(); line++) {
            slot(row + 1 + line, positions.get(line), line == positions.size() - 1);
        }
    }

    private void headings(int row) {
        List<String> headings = List.of(
                "Club",
                table.inDistance("Today carry"),
                table.inDistance("Planned carry"),
                table.inDistance("Live carry"),
                "Gap between",
                table.inDistance("Today gap"),
                table.inDistance("Planned gap"),
                table.inDistance("Live gap"),
                table.inDistance("Gap wish"),
                "Gap chance [%]");
        table.headings(row, headings, 42);
        table.widths(hasCandidates ? 20 : 18, 8, 8, 8, 25, 7.5, 7.5, 7.5, 7.5, 8);
    }

    private void slot(int row, int index, boolean last) {
        PlanRow values = new PlanRow(bag, index);
        name(row, index, values);
        for (PlanState state : PlanState.values()) {
            OptionalDouble carryM = values.option(state).carryM();
            linked(row, CARRY_COLUMN + state.ordinal(), PlanColumn.of(state, PlanQuantity.CARRY), index, carryM);
        }
        if (!last) {
            gap(row, index, values);
        }
    }

    /** Today's club, and the live one where it is another. */
    private void name(int row, int index, PlanRow values) {
        String today = values.option(PlanState.TODAY).clubText();
        if (!values.slot().hasCandidates()) {
            pen.text(row, 0, Role.TEXT, today);
            return;
        }
        String live = values.option(PlanState.LIVE).clubText();
        String todayCell = plan(PlanColumn.TODAY_CLUB, index);
        String liveCell = plan(PlanColumn.LIVE_CLUB, index);
        String formula = "IF(" + todayCell + "=" + liveCell + "," + todayCell + "&\"\"," + todayCell + "&\" / \"&"
                + liveCell + ")";
        pen.formula(row, 0, Role.TEXT, formula, today.equals(live) ? today : today + " / " + live);
    }

    private void gap(int row, int index, PlanRow values) {
        gapName(row, index, values);
        for (PlanState state : PlanState.values()) {
            linked(
                    row,
                    GAP_COLUMN + state.ordinal(),
                    PlanColumn.of(state, PlanQuantity.GAP),
                    index,
                    gapM(values, state));
        }
        String wish = plan(PlanColumn.GAP_WISH, index);
        OptionalDouble wishM = values.wishM(PlanState.LIVE);
        number(row, WISH_COLUMN, "IF(" + wish + "=\"\",\"\"," + wish + ")", wishM);
        bag.outlook().stream()
                .flatMap(outlook -> outlook.gaps().stream())
                .filter(gap -> gap.fromIndex() == index)
                .forEach(gap -> pen.number(row, SURE_COLUMN, Role.COUNT, "0", percent(gap)));
    }

    /** The chance of a gap as a whole number of percent. */
    private static double percent(GapOutlook gap) {
        return Double.parseDouble(Numbers.fixed(100 * gap.chanceRatio(), 0));
    }

    private static OptionalDouble gapM(PlanRow values, PlanState state) {
        return values.gap(state).map(GapTerm::gapM).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    /** The live clubs on both sides; without a live gap the slot's own name, if there is a gap today or planned. */
    private void gapName(int row, int index, PlanRow values) {
        String live = values.option(PlanState.LIVE).clubText();
        Optional<String> next = values.gap(PlanState.LIVE)
                .flatMap(gap -> values.next(PlanState.LIVE))
                .map(Option::clubText);
        if (!hasCandidates) {
            next.ifPresent(name -> pen.text(row, GAP_NAME_COLUMN, Role.TEXT, live + DASH + name));
            return;
        }
        String formula = "IF(ISNUMBER(" + plan(PlanColumn.LIVE_GAP, index) + "),"
                + plan(PlanColumn.LIVE_CLUB, index) + "&\"" + DASH + "\"&" + plan(PlanColumn.LIVE_NEXT_CLUB, index)
                + ",IF(COUNT(" + SheetPen.ref(row, GAP_COLUMN) + ":" + SheetPen.ref(row, GAP_COLUMN + 1)
                + ")>0,\"after \"&" + SheetPen.ref(row, 0) + ",\"\"))";
        boolean other = gapM(values, PlanState.TODAY).isPresent()
                || gapM(values, PlanState.PLANNED).isPresent();
        String today = values.option(PlanState.TODAY).clubText();
        String after = other ? "after " + (today.equals(live) ? today : today + " / " + live) : "";
        pen.formula(
                row,
                GAP_NAME_COLUMN,
                Role.TEXT,
                formula,
                next.map(name -> live + DASH + name).orElse(after));
    }

    private String plan(PlanColumn column, int index) {
        return PlanSheet.NAME + "!" + column.at(planRow + index);
    }

    private void linked(int row, int column, PlanColumn from, int index, OptionalDouble valueM) {
        number(row, column, plan(from, index), valueM);
    }

    private void number(int row, int column, String formula, OptionalDouble valueM) {
        OptionalDouble cached = valueM.isPresent() ? OptionalDouble.of(distance.fromM(valueM.getAsDouble())) : valueM;
        pen.formula(row, column, Role.NUMBER, "0.0", formula, cached);
    }
}
