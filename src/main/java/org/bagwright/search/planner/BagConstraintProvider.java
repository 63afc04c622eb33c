package org.bagwright.search.planner;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.WantedRange;
import org.bagwright.search.model.Candidate.Taken;
import org.bagwright.search.model.SearchBag;
import org.bagwright.search.model.SlotAssignment;
import org.bagwright.search.model.StockPile;
import org.bagwright.search.score.Cost;
import org.bagwright.search.score.PenaltyRules;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintCollectors;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;
import org.optaplanner.core.api.score.stream.Joiners;
import org.optaplanner.core.api.score.stream.bi.BiConstraintStream;
import org.optaplanner.core.api.score.stream.tri.TriConstraintStream;
import org.optaplanner.core.api.score.stream.uni.UniConstraintStream;

/**
 * What makes bags good: every rule of the search, each as one stream. Hard is what no plan trades against anything else, medium
 * the broken musts in thousandths, soft the penalty in micropoints.
 */
public final class BagConstraintProvider implements ConstraintProvider {

    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        List<Constraint> rules = new ArrayList<>(List.of(
                openOption(factory),
                stock(factory),
                mostClubs(factory),
                mostChanges(factory),
                ownHard(factory),
                gapMust(factory),
                gapLimit(factory),
                reachMust(factory),
                carriesFall(factory),
                spreadMust(factory)));
        Measure.ofOptions().forEach(measure -> rules.add(own(factory, measure)));
        rules.add(reach(factory));
        rules.add(gap(factory));
        rules.add(spread(factory));
        return rules.toArray(Constraint[]::new);
    }

    Constraint openOption(ConstraintFactory factory) {
        return factory.forEach(SlotAssignment.class)
                .filter(slot -> slot.choice().closed())
                .penalizeLong(HardMediumSoftLongScore.ONE_HARD, slot -> 1)
                .asConstraint("open option");
    }

    Constraint stock(ConstraintFactory factory) {
        return factory.forEach(SlotAssignment.class)
                .flattenLast(slot -> slot.choice().taken())
                .groupBy(Taken::item, ConstraintCollectors.sum(Taken::pieces))
                .join(StockPile.class, Joiners.equal((item, taken) -> item, StockPile::item))
                .filter((item, taken, pile) -> taken > pile.available())
                .penalizeLong(HardMediumSoftLongScore.ONE_HARD, (item, taken, pile) -> taken - pile.available())
                .asConstraint("stock");
    }

    Constraint mostClubs(ConstraintFactory factory) {
        return factory.forEach(SlotAssignment.class)
                .filter(slot -> slot.bag().slotCount() > PenaltyRules.MOST_CLUBS)
                .filter(slot -> slot.choice().carried())
                .groupBy(SlotAssignment::bag, ConstraintCollectors.count())
                .filter((bag, clubs) -> clubs > PenaltyRules.MOST_CLUBS)
                .penalizeLong(HardMediumSoftLongScore.ONE_HARD, (bag, clubs) -> PenaltyRules.clubsBeyond(clubs))
                .asConstraint("most clubs");
    }

    Constraint mostChanges(ConstraintFactory factory) {
        return factory.forEach(SlotAssignment.class)
                .filter(slot -> slot.bag().countsChanges())
                .groupBy(SlotAssignment::bag, ConstraintCollectors.sum(slot -> slot.choice()
                        .changes()))
                .filter((bag, changes) -> changes > bag.mostChanges())
                .penalizeLong(
                        HardMediumSoftLongScore.ONE_HARD,
                        (bag, changes) -> PenaltyRules.changesBeyond(changes, bag.mostChanges()))
                .asConstraint("most changes");
    }

    /** Musts and limits of each club by itself. */
    Constraint ownHard(ConstraintFactory factory) {
        return factory.forEach(SlotAssignment.class)
                .filter(slot -> slot.choice().own().cost().breaks() > 0)
                .penalizeLong(
                        HardMediumSoftLongScore.ofMedium(1),
                        slot -> slot.choice().own().cost().breaks())
                .asConstraint("own musts and limits");
    }

    Constraint gapMust(ConstraintFactory factory) {
        return neighbours(factory)
                .filter((from, to) -> from.bag().gapAim().must())
                .penalizeLong(
                        HardMediumSoftLongScore.ofMedium(1),
                        (from, to) -> PenaltyRules.gapMustBreaks(
                                from.bag().gapAim(),
                                from.gapM(to),
                                from.choice().wishM()))
                .asConstraint("gap must");
    }

    Constraint gapLimit(ConstraintFactory factory) {
        return neighbours(factory)
                .filter((from, to) -> !from.choice().gapLimitsM().equals(WantedRange.ANY))
                .penalizeLong(
                        HardMediumSoftLongScore.ofMedium(1),
                        (from, to) -> PenaltyRules.gapLimitBreaks(
                                from.bag().gapAim(),
                                from.gapM(to),
                                from.choice().gapLimitsM()))
                .asConstraint("gap limits");
    }

    Constraint reachMust(ConstraintFactory factory) {
        return longest(factory)
                .filter(slot -> slot.choice().first().cost().breaks() > 0)
                .penalizeLong(
                        HardMediumSoftLongScore.ofMedium(1),
                        slot -> slot.choice().first().cost().breaks())
                .asConstraint("reach must");
    }

    Constraint carriesFall(ConstraintFactory factory) {
        return neighbours(factory)
                .filter((from, to) -> from.gapM(to) <= 0)
                .penalizeLong(
                        HardMediumSoftLongScore.ofMedium(1), (from, to) -> PenaltyRules.carryBreaks(from.gapM(to)))
                .asConstraint("carries fall");
    }

    Constraint spreadMust(ConstraintFactory factory) {
        return groups(factory)
                .filter((bag, group, values) -> bag.spreadAim().must())
                .penalizeLong(HardMediumSoftLongScore.ofMedium(1), (bag, group, values) -> Cost.spread(
                                bag.spreadAim(), values)
                        .breaks())
                .asConstraint("spread must");
    }

    /** What each option costs by itself by one measure. */
    Constraint own(ConstraintFactory factory, Measure measure) {
        return factory.forEach(SlotAssignment.class)
                .penalizeLong(
                        HardMediumSoftLongScore.ONE_SOFT,
                        slot -> slot.choice().own().micropoints(measure))
                .asConstraint(measure.label());
    }

    Constraint reach(ConstraintFactory factory) {
        return longest(factory)
                .penalizeLong(
                        HardMediumSoftLongScore.ONE_SOFT,
                        slot -> slot.choice().first().cost().micropoints())
                .asConstraint("reach");
    }

    Constraint gap(ConstraintFactory factory) {
        return neighbours(factory)
                .penalizeLong(
                        HardMediumSoftLongScore.ONE_SOFT,
                        (from, to) -> PenaltyRules.gapMicropoints(
                                from.bag().gapAim(),
                                from.gapM(to),
                                from.choice().wishM(),
                                from.gapVarianceM2(to)))
                .asConstraint("gap");
    }

    Constraint spread(ConstraintFactory factory) {
        return groups(factory)
                .penalizeLong(
                        HardMediumSoftLongScore.ONE_SOFT, (bag, group, values) -> Cost.spread(bag.spreadAim(), values)
                                .micropoints())
                .asConstraint("spread");
    }

    /** The longest club of each bag: the first in slot order that flies. */
    private static UniConstraintStream<SlotAssignment> longest(ConstraintFactory factory) {
        return factory.forEach(SlotAssignment.class)
                .filter(slot -> slot.mayBeLongest() && slot.flies())
                .ifNotExists(
                        SlotAssignment.class,
                        Joiners.equal(SlotAssignment::bag),
                        Joiners.greaterThan(SlotAssignment::id),
                        Joiners.filtering((slot, before) -> before.flies()));
    }

    /**
     * Each club that flies with the next one that does in the same bag. Pairs with a slot between them that always flies
     * are left out at once, which made the search four to five times faster; only where slots may be passed over does it
     * take a look at what is between.
     */
    private static BiConstraintStream<SlotAssignment, SlotAssignment> neighbours(ConstraintFactory factory) {
        return factory.forEach(SlotAssignment.class)
                .filter(SlotAssignment::flies)
                .join(
                        factory.forEach(SlotAssignment.class).filter(SlotAssignment::flies),
                        Joiners.lessThan(SlotAssignment::id),
                        Joiners.greaterThanOrEqual(SlotAssignment::reach, SlotAssignment::id))
                .ifNotExists(
                        SlotAssignment.class,
                        Joiners.equal((SlotAssignment from, SlotAssignment to) -> from.bag(), SlotAssignment::bag),
                        Joiners.lessThan((SlotAssignment from, SlotAssignment to) -> from.id(), SlotAssignment::id),
                        Joiners.greaterThan((SlotAssignment from, SlotAssignment to) -> to.id(), SlotAssignment::id),
                        Joiners.filtering((from, to, between) -> between.flies()));
    }

    /** The values by which the clubs of each group of each bag are matched. */
    private static TriConstraintStream<SearchBag, String, List<Double>> groups(ConstraintFactory factory) {
        return factory.forEach(SlotAssignment.class)
                .filter(slot -> slot.bag().isMatched())
                .filter(slot -> slot.choice().match().isPresent())
                .groupBy(
                        SlotAssignment::bag,
                        slot -> slot.choice().match().orElseThrow().group(),
                        ConstraintCollectors.toList(
                                slot -> slot.choice().match().orElseThrow().valueMeasureUnits()));
    }
}
