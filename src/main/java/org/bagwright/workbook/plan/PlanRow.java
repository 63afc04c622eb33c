package org.bagwright.workbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.StatedLimit;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.Broken;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.ReachTerm;
import org.bagwright.domain.plan.SpreadTerm;
import org.bagwright.domain.text.Numbers;

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

    /** Half of the range that holds the change of carry from what is in the slot today in 80 of 100 cases, metres. */
    OptionalDouble changeSpreadM() {
        OptionalDouble sdM = slot().changeSdM(option(PlanState.LIVE));
        return sdM.isPresent() ? OptionalDouble.of(CarryDoubt.HALF_80_SDS * sdM.getAsDouble()) : sdM;
    }

    Aim aim(Measure measure) {
        return bag.options().aims().of(measure);
    }

    /** What the slot costs by measure. */
    Terms terms(PlanState state) {
        return bag.termsAt(state.of(bag), index);
    }

    /** The greatest miss of the live choice, in tolerances. */
    double worstTolerances() {
        return MissColumn.all().stream()
                .mapToDouble(column -> missTolerances(column.measure()))
                .max()
                .orElse(0);
    }

    /** How far the live choice is off, in a word, and by which measure. */
    String missInWords() {
        double worst = worstTolerances();
        if (worst <= PlanFormulas.INSIDE) {
            return "inside";
        }
        String measure = MissColumn.all().stream()
                .map(MissColumn::measure)
                .filter(each -> missTolerances(each) >= worst - PlanFormulas.HAIR)
                .findFirst()
                .orElseThrow()
                .label();
        return (worst <= PlanFormulas.CLOSE ? "close: " : "far: ") + measure;
    }

    /** The set-up of a state in short: the club where the plan takes another, setting, weighting, bends. */
    String setupInShort(PlanState state) {
        Option option = option(state);
        if (option.isEmpty()) {
            return Option.LEFT_OUT;
        }
        Choice choice = option.setup().orElseThrow().choice();
        List<String> parts = new ArrayList<>();
        PlanState other = state == PlanState.TODAY ? PlanState.PLANNED : PlanState.TODAY;
        if (!option.clubText().equals(option(other).clubText())) {
            parts.add(option.clubText());
        }
        choice.setting().ifPresent(parts::add);
        choice.weighting().ifPresent(parts::add);
        if (!choice.bend().equals(Bend.NONE)) {
            parts.add(
                    signed(choice.bend().loftDeg()) + "/" + signed(choice.bend().lieDeg()));
        }
        return parts.isEmpty() ? "-" : String.join(", ", parts);
    }

    private static String signed(double bendDeg) {
        return (bendDeg > 0 ? "+" : "") + Numbers.trimmed(bendDeg);
    }

    /** How far a state's gap is off its wish, metres; empty without a gap. */
    OptionalDouble offWishM(PlanState state) {
        OptionalDouble wishM = wishM(state);
        return gap(state)
                .filter(gap -> wishM.isPresent())
                .map(gap -> OptionalDouble.of(gap.gapM() - wishM.getAsDouble()))
                .orElseGet(OptionalDouble::empty);
    }

    /** How far the live choice misses by a measure, in tolerances; by spread only where that counts or is a must. */
    double missTolerances(Measure measure) {
        Aim aim = bag.options().aims().of(measure);
        return switch (measure.scope()) {
            case CLUB ->
                aim.tolerances(option(PlanState.LIVE)
                        .setup()
                        .map(setup -> setup.deviations().getOrDefault(measure, 0.0))
                        .orElse(0.0));
            case NEIGHBOURS ->
                aim.tolerances(gap(PlanState.LIVE).map(GapTerm::deviationM).orElse(0.0));
            case LONGEST ->
                aim.tolerances(PlanState.LIVE
                        .of(bag)
                        .reachAt(index)
                        .map(ReachTerm::shortM)
                        .orElse(0.0));
            case GROUP ->
                aim.importancePoints() > 0 || aim.must()
                        ? aim.tolerances(spread(PlanState.LIVE)
                                .map(SpreadTerm::deviationMeasureUnits)
                                .orElse(0.0))
                        : 0;
            case ITEMS -> 0;
        };
    }

    /** How far the live choice is beyond its limits of a quantity, in the unit of the limits. */
    double beyondMeasureUnits(LimitKind.Quantity quantity) {
        Option live = option(PlanState.LIVE);
        if (live.isEmpty()) {
            return 0;
        }
        ClubSetup setup = live.setup().orElseThrow();
        return setup.wishes().limits().all().stream()
                .filter(limit -> limit.kind().quantity() == quantity)
                .mapToDouble(limit -> beyondMeasureUnits(limit, setup))
                .max()
                .orElse(0);
    }

    private double beyondMeasureUnits(StatedLimit limit, ClubSetup setup) {
        OptionalDouble value = limit.kind().quantity() == LimitKind.Quantity.GAP
                ? gap(PlanState.LIVE).stream().mapToDouble(GapTerm::gapM).findFirst()
                : setup.value(limit.kind());
        return value.isPresent() ? limit.beyondMeasureUnits(value.getAsDouble()) : 0;
    }

    /** How many limits of the whole bag the live choices break: the most changes, and the clubs in a bag. */
    int brokenOfBag() {
        List<Option> live = bag.optionsOf(PlanState.LIVE.of(bag));
        int changes = live.stream().mapToInt(Option::changes).sum();
        long clubs = live.stream().filter(option -> !option.isEmpty()).count();
        return (changes > bag.options().mostChanges().orElse(Integer.MAX_VALUE) ? 1 : 0)
                + (clubs > BagOptions.MOST_CLUBS ? 1 : 0);
    }

    /** Whether the rules of this slot are the first of its golfer. */
    boolean isFirst() {
        return index == 0;
    }

    /** Whether a rule is broken in this slot. */
    boolean isWhere(Broken broken) {
        return broken.isAt(golfer().name(), index);
    }
}
