package org.bagwright.domain.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.session.ClubSession;

/**
 * One golfer's bag, as it is today and as planned.
 *
 * @param options the bag with all its options
 * @param today the bag as it is
 * @param planned the bag as planned
 * @param reasons why it is planned so; nothing until it is worked out
 * @param outlook how sure the plan is; empty until it is computed
 * @param sessions his shots by club and day, and how they came out; nothing until they are computed, or without dates
 */
public record BagResult(
        BagOptions options,
        BagState today,
        BagState planned,
        PlanReasons reasons,
        Optional<BagOutlook> outlook,
        List<ClubSession> sessions) {
    public BagResult {
        sessions = List.copyOf(sessions);
    }

    /** A bag with its plan alone, nothing computed about it yet. */
    public static BagResult of(BagOptions options, BagState today, BagState planned) {
        return new BagResult(options, today, planned, PlanReasons.NONE, Optional.empty(), List.of());
    }

    public BagResult withOutlook(BagOutlook computed) {
        return new BagResult(options, today, planned, reasons, Optional.of(computed), sessions);
    }

    public BagResult withSessions(List<ClubSession> computed) {
        return new BagResult(options, today, planned, reasons, outlook, computed);
    }

    public BagResult withReasons(PlanReasons found) {
        return new BagResult(options, today, planned, found, outlook, sessions);
    }

    public List<Step> steps() {
        return reasons.steps();
    }

    public List<OtherPlan> others() {
        return reasons.others();
    }

    public List<Relaxation> relaxations() {
        return reasons.relaxations();
    }

    public Golfer golfer() {
        return options.golfer();
    }

    /** The options of a state, in the order of the bag. */
    public List<Option> optionsOf(BagState state) {
        return options.chosen(state.chosen());
    }

    /** How many items a state changes from today. */
    public int changesOf(BagState state) {
        return optionsOf(state).stream().mapToInt(Option::changes).sum();
    }

    /** What the slot at this position costs in a state, by measure: its option by itself and together with others. */
    public Terms termsAt(BagState state, int index) {
        return optionsOf(state).get(index).terms().plus(state.termsWithOthers(index));
    }

    /** As {@link #termsAt}, by the best guess of all carries. */
    public Terms missTermsAt(BagState state, int index) {
        return optionsOf(state)
                .get(index)
                .terms()
                .withoutDoubt(Measure.CARRY)
                .plus(state.termsWithOthers(index).withoutDoubt(Measure.GAP));
    }

    /** What a state costs by measure. */
    public Terms terms(BagState state) {
        return optionsOf(state).stream().map(Option::terms).reduce(state.termsWithOthers(), Terms::plus);
    }

    /** What a state breaks, in words: the measures whose musts it misses, then the headings of its limits, then the rest. Empty if it breaks nothing. */
    public Set<String> broken(BagState state) {
        Set<String> broken = new LinkedHashSet<>();
        terms(state).broken().forEach(measure -> broken.add(measure.label()));
        terms(state).brokenLimits().forEach(kind -> broken.add(kind.label()));
        if (state.gaps().stream().anyMatch(gap -> gap.orderBreaks() > 0)) {
            broken.add("order of carries");
        }
        optionsOf(state).stream()
                .flatMap(option -> option.closedReasons().stream())
                .sorted()
                .forEach(reason -> broken.add(reason.label()));
        if (changesOf(state) > options.mostChanges().orElse(Integer.MAX_VALUE)) {
            broken.add("most changes");
        }
        if (optionsOf(state).stream().filter(option -> !option.isEmpty()).count() > BagOptions.MOST_CLUBS) {
            broken.add("number of clubs");
        }
        return broken;
    }

    /** Everything that a state breaks, by club, figure, limit and cell; what all bags share left out. */
    public List<Broken> broken(BagState state, BookSettings settings) {
        return new BrokenRules(this, state, settings).all();
    }

    /** The worst of all misses of a state in what can be one; the first of equals, empty for a bag without a club. */
    public Optional<Miss> worstMiss(BagState state) {
        List<Miss> misses = new ArrayList<>();
        List<Option> chosen = optionsOf(state);
        for (int index = 0; index < chosen.size(); index++) {
            int slot = index;
            chosen.get(index).setup().ifPresent(setup -> setup.deviations().forEach((measure, off) -> {
                if (measure.canBeWorstMiss()) {
                    misses.add(Miss.of(options.aims().of(measure), slot, off));
                }
            }));
        }
        state.reach().ifPresent(reach -> misses.add(Miss.of(options.reachAim(), reach.index(), reach.shortM())));
        state.gaps().forEach(gap -> misses.add(Miss.of(options.gapAim(), gap.fromIndex(), gap.deviationM())));
        return misses.stream()
                .min(Comparator.comparingDouble(Miss::toleranceRatio).reversed());
    }

    /** What the greatest of all relaxations would bring, points; empty where none is known. */
    public OptionalDouble headRoomPoints() {
        return relaxations().stream().mapToDouble(Relaxation::gainPoints).max();
    }
}
