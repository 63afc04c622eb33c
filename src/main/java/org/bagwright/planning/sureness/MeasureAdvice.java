package org.bagwright.planning.sureness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.CarryOrigin;
import org.bagwright.domain.option.ExpectedShot;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.MeasureNext;

/**
 * What to measure next: for each club five shots at the setting where they are worth most, or a gauge reading, which is worth
 * something for its targets of loft and lie alone.
 *
 * @param bag the bag
 * @param planned for each slot the index of its planned option
 * @param gauged whether a club has a gauge reading
 */
record MeasureAdvice(BagOptions bag, List<Integer> planned, Predicate<Club> gauged) {
    private static final int MOST_TOLD = 3;
    private static final int MOST_OPTIONS = 24;
    private static final int MOST_SETTINGS = 5;
    private static final int SHOTS = 5;
    /** What a broken thousandth of a tolerance is worth here, points: ten for a tolerance; assumed. */
    private static final double POINTS_PER_THOUSANDTH = 0.01;
    /** Scatter of single shots as a share of the carry; assumed. */
    private static final double SCATTER_RATIO = 0.03;
    /** By how much an average of any number of shots differs from the model, as a share of the carry; assumed. */
    private static final double DISCREPANCY_RATIO = 0.004;
    /** A head is made within one degree; common practice. */
    private static final double MADE_DEG = 0.6;
    /** Repeatability of a gauge; common practice. */
    private static final double GAUGED_DEG = 0.25;
    /** The gain that is worked out is 1.6 times what comes true in simulations. */
    private static final double TRUE_RATIO = 0.6;
    /** A quarter of a tolerance's cost is not worth a session. */
    private static final double LITTLE_POINTS = 0.25;

    private static final double LIKELY_RATIO = 0.5;

    /** The advice. */
    MeasureNext next() {
        Chain chain = new Chain(bag, planned, MOST_OPTIONS, POINTS_PER_THOUSANDTH);
        Belief belief = new Belief(chain);
        KnowledgeGradient gradient = new KnowledgeGradient(chain, belief.expected());
        List<MeasureNext.Advice> all = new ArrayList<>();
        for (SlotOptions slot : bag.slots()) {
            for (Club club : slot.clubs()) {
                shots(slot, club, belief, gradient).ifPresent(all::add);
                reading(slot, club, belief, gradient).ifPresent(all::add);
            }
        }
        List<MeasureNext.Advice> best = all.stream()
                .sorted(Comparator.comparingDouble(MeasureNext.Advice::worthPoints)
                        .reversed())
                .limit(MOST_TOLD)
                .toList();
        boolean little = best.stream().allMatch(advice -> advice.worth() == MeasureNext.Worth.LITTLE);
        return new MeasureNext(best, little && everyClubHasShots());
    }

    private boolean everyClubHasShots() {
        return bag.chosen(planned).stream()
                .flatMap(option -> option.setup().stream())
                .flatMap(made -> made.expected().stream())
                .map(ExpectedShot::origin)
                .allMatch(origin -> origin == CarryOrigin.OWN_HERE || origin == CarryOrigin.OWN_ELSEWHERE);
    }

    private Optional<MeasureNext.Advice> shots(SlotOptions slot, Club club, Belief belief, KnowledgeGradient gradient) {
        return toHit(slot, club).stream()
                .map(hit -> advice(
                        club,
                        MeasureNext.What.SHOTS,
                        club.sleeve().flatMap(sleeve -> hit.option().choice().setting()),
                        gradient.of(outcome -> belief.afterShots(hit, noiseM2(hit), outcome))))
                .max(Comparator.comparingDouble(MeasureNext.Advice::worthPoints));
    }

    private static double noiseM2(ChainOption hit) {
        double scatterM = SCATTER_RATIO * hit.carryM();
        double discrepancyM = DISCREPANCY_RATIO * hit.carryM();
        return scatterM * scatterM / SHOTS + discrepancyM * discrepancyM;
    }

    /** The settings at which a club may be hit: weighted and bent as today; of many some from the shortest to the longest. */
    private List<ChainOption> toHit(SlotOptions slot, Club club) {
        Choice today = club.today();
        Map<Optional<String>, Integer> bySetting = new LinkedHashMap<>();
        for (int index = 0; index < slot.options().size(); index++) {
            Option option = slot.options().get(index);
            boolean possible = index == slot.todayIndex() || option.open();
            if (possible && option.carryM().isPresent() && option.club().equals(club)) {
                Choice choice = option.choice();
                if (choice.weighting().equals(today.weighting())
                        && choice.bend().equals(today.bend())) {
                    bySetting.putIfAbsent(choice.setting(), index);
                }
            }
        }
        List<ChainOption> byCarry = bySetting.values().stream()
                .map(index -> new ChainOption(bag, index, slot.options().get(index)))
                .sorted(Comparator.comparingDouble(ChainOption::carryM))
                .toList();
        return byCarry.size() <= MOST_SETTINGS ? byCarry : some(byCarry, slot);
    }

    private List<ChainOption> some(List<ChainOption> byCarry, SlotOptions slot) {
        int chosen = planned.get(bag.slots().indexOf(slot));
        Map<Integer, ChainOption> some = new TreeMap<>();
        for (int place = 0; place < byCarry.size(); place++) {
            int index = byCarry.get(place).index();
            if (index == chosen || index == slot.todayIndex()) {
                some.put(place, byCarry.get(place));
            }
        }
        IntStream.range(0, MOST_SETTINGS)
                .map(step -> step * (byCarry.size() - 1) / (MOST_SETTINGS - 1))
                .forEach(place -> some.put(place, byCarry.get(place)));
        return List.copyOf(some.values());
    }

    private Optional<MeasureNext.Advice> reading(
            SlotOptions slot, Club club, Belief belief, KnowledgeGradient gradient) {
        if (gauged.test(club)) {
            return Optional.empty();
        }
        double moveDeg = MADE_DEG * MADE_DEG / Math.hypot(MADE_DEG, GAUGED_DEG);
        return List.of(Measure.LOFT, Measure.LIE).stream()
                .filter(measure -> differs(slot, club, measure))
                .map(measure -> gradient.of(outcome -> belief.afterReading(club, measure, outcome * moveDeg)))
                .reduce(KnowledgeGradient.Value::plus)
                .map(value -> advice(club, MeasureNext.What.GAUGE, Optional.empty(), value));
    }

    /** Whether a plan can choose how far a club is from its target. */
    private static boolean differs(SlotOptions slot, Club club, Measure measure) {
        return slot.optionsOf(club).stream()
                        .flatMap(option -> option.setup().stream())
                        .flatMap(made -> Optional.ofNullable(made.deviations().get(measure)).stream())
                        .collect(Collectors.toSet())
                        .size()
                > 1;
    }

    private static MeasureNext.Advice advice(
            Club club, MeasureNext.What what, Optional<String> setting, KnowledgeGradient.Value value) {
        double worthPoints = TRUE_RATIO * value.gainPoints();
        MeasureNext.Worth worth = worthPoints < LITTLE_POINTS
                ? MeasureNext.Worth.LITTLE
                : value.changeRatio() >= LIKELY_RATIO ? MeasureNext.Worth.LIKELY : MeasureNext.Worth.MAYBE;
        return new MeasureNext.Advice(club.slot(), club.name(), what, setting, worthPoints, worth);
    }
}
