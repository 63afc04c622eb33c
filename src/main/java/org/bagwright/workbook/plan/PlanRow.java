package org.bagwright.workbook.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.Terms;
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

    /** The carry of the golfer's longest club of today, metres. */
    OptionalDouble longestTodayM() {
        return bag.options().longestTodayM();
    }

    /** What the slot costs by measure. */
    Terms terms(PlanState state) {
        return bag.termsAt(state.of(bag), index);
    }

    String fitWord() {
        if (option(PlanState.LIVE).isEmpty()) {
            return Option.LEFT_OUT;
        }
        boolean outOfOrder = gap(PlanState.LIVE).map(GapTerm::gapM).orElse(1.0) <= 0;
        return PlanFormulas.fitWord(outOfOrder, worstTolerances());
    }

    /** The greatest miss of the live choice, in tolerances; spread only where it counts. */
    double worstTolerances() {
        return option(PlanState.LIVE)
                .setup()
                .map(setup -> misses(setup).max().orElse(0))
                .orElse(0.0);
    }

    private DoubleStream misses(ClubSetup setup) {
        Aims aims = bag.options().aims();
        DoubleStream byItself = setup.deviations().entrySet().stream()
                .mapToDouble(off -> aims.of(off.getKey()).tolerances(off.getValue()));
        DoubleStream gap = gap(PlanState.LIVE).stream()
                .mapToDouble(term -> aims.of(Measure.GAP).tolerances(term.deviationM()));
        DoubleStream reach = PlanState.LIVE.of(bag).reachAt(index).stream()
                .mapToDouble(term -> aims.of(Measure.REACH).tolerances(term.shortM()));
        DoubleStream spread = spread(PlanState.LIVE).stream()
                .filter(term -> aims.of(Measure.SPREAD).importancePoints() > 0)
                .mapToDouble(term -> aims.of(Measure.SPREAD).tolerances(term.deviationMeasureUnits()));
        return Stream.of(byItself, reach, gap, spread).flatMapToDouble(misses -> misses);
    }
}
