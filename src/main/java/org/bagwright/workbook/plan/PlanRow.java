package org.bagwright.workbook.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.SpreadTerm;

/** One slot of one bag as the sheet Plan shows it: the program's own values for the cells that hold formulas. */
public final class PlanRow {
    private final BagResult bag;
    private final int index;

    public PlanRow(BagResult bag, int index) {
        this.bag = bag;
        this.index = index;
    }

    Golfer golfer() {
        return bag.golfer();
    }

    public SlotOptions slot() {
        return bag.options().slots().get(index);
    }

    /** Whether this slot's choice was pinned on the sheet Plan from which the book was read. */
    boolean pinned(Book book) {
        return book.pinOf(golfer().name(), slot().slot()).isPresent();
    }

    public Option option(PlanState state) {
        return option(state, index);
    }

    private Option option(PlanState state, int slot) {
        return bag.options()
                .slots()
                .get(slot)
                .options()
                .get(state.of(bag).chosen().get(slot));
    }

    public Optional<GapTerm> gap(PlanState state) {
        return state.of(bag).gapAfter(index);
    }

    Optional<SpreadTerm> spread(PlanState state) {
        return state.of(bag).spreadAt(index);
    }

    /** The first option further down that carries. */
    public Optional<Option> next(PlanState state) {
        for (int slot = index + 1; slot < bag.options().slots().size(); slot++) {
            if (option(state, slot).carryM().isPresent()) {
                return Optional.of(option(state, slot));
            }
        }
        return Optional.empty();
    }

    /** Whether a club that carries can stand here. */
    public boolean mayCarry() {
        return mayCarry(slot());
    }

    /** Whether a club that carries can stand further down too, so that there may be a gap between them. */
    boolean mayHaveGap() {
        List<SlotOptions> slots = bag.options().slots();
        return mayCarry() && slots.subList(index + 1, slots.size()).stream().anyMatch(PlanRow::mayCarry);
    }

    private static boolean mayCarry(SlotOptions slot) {
        return slot.options().stream().anyMatch(option -> option.carryM().isPresent());
    }

    /** The gap wanted after the club of a state, metres; empty where no club carries. */
    public OptionalDouble wishM(PlanState state) {
        Option option = option(state);
        return option.carryM().isPresent() && mayHaveGap()
                ? OptionalDouble.of(bag.options().wishAfterM(option))
                : OptionalDouble.empty();
    }

    double points(PlanState state, PlanTerm term) {
        return term.points(option(state), gap(state), spread(state));
    }

    double penaltyPoints(PlanState state) {
        double points = 0;
        for (PlanTerm term : PlanTerm.values()) {
            points += points(state, term);
        }
        return points;
    }

    String fitWord(Aims aims) {
        if (option(PlanState.LIVE).isEmpty()) {
            return Option.LEFT_OUT;
        }
        boolean outOfOrder = gap(PlanState.LIVE).map(GapTerm::gapM).orElse(1.0) <= 0;
        return PlanFormulas.fitWord(outOfOrder, worstTolerances(aims));
    }

    /** The greatest miss of the live choice, in tolerances. */
    double worstTolerances(Aims aims) {
        return option(PlanState.LIVE)
                .setup()
                .map(setup -> Math.max(worstByItself(setup, aims), worstToOthers(aims)))
                .orElse(0.0);
    }

    private double worstByItself(ClubSetup setup, Aims aims) {
        return setup.deviations(golfer().sitsRange()).entrySet().stream()
                .mapToDouble(off -> tolerances(aims, off.getKey(), off.getValue()))
                .max()
                .orElse(0);
    }

    private double worstToOthers(Aims aims) {
        double gap = gap(PlanState.LIVE)
                .map(term -> tolerances(aims, Measure.GAP, term.gapM() - term.wishM()))
                .orElse(0.0);
        boolean spreadCounts = aims.of(Measure.SPREAD).importancePoints() > 0;
        double spread = spread(PlanState.LIVE)
                .filter(term -> spreadCounts)
                .map(term -> tolerances(aims, Measure.SPREAD, term.deviationMeasureUnits()))
                .orElse(0.0);
        return Math.max(gap, spread);
    }

    private static double tolerances(Aims aims, Measure measure, double deviation) {
        return Math.abs(deviation) / aims.of(measure).toleranceMeasureUnits();
    }
}
