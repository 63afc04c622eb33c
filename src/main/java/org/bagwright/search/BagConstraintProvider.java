package org.bagwright.search;

import java.util.function.ToLongFunction;
import org.bagwright.search.Candidate.OwnMicropoints;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintCollectors;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;
import org.optaplanner.core.api.score.stream.Joiners;
import org.optaplanner.core.api.score.stream.bi.BiConstraintStream;

/** What makes a bag good: every rule of the search, each as one stream. */
public final class BagConstraintProvider implements ConstraintProvider {
    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        return new Constraint[] {
            openOption(factory),
            ownMust(factory),
            gapMust(factory),
            carriesFall(factory),
            mostClubs(factory),
            mostChanges(factory),
            loft(factory),
            lie(factory),
            sits(factory),
            carry(factory),
            change(factory),
            gap(factory),
        };
    }

    Constraint openOption(ConstraintFactory factory) {
        return factory.forEach(ClubSeat.class)
                .filter(seat -> seat.choice().closedBreaks() > 0)
                .penalizeLong(HardSoftLongScore.ONE_HARD, seat -> seat.choice().closedBreaks())
                .asConstraint("open option");
    }

    Constraint ownMust(ConstraintFactory factory) {
        return factory.forEach(ClubSeat.class)
                .filter(seat -> seat.choice().mustBreaks() > 0)
                .penalizeLong(HardSoftLongScore.ONE_HARD, seat -> seat.choice().mustBreaks())
                .asConstraint("own must");
    }

    Constraint gapMust(ConstraintFactory factory) {
        return neighbours(factory)
                .filter((from, to) -> from.bag().gapAim().must())
                .penalizeLong(
                        HardSoftLongScore.ONE_HARD,
                        (from, to) -> PenaltyRules.gapMustBreaks(from.bag().gapAim(), from.gapM(to), from.gapWishM()))
                .asConstraint("gap must");
    }

    Constraint carriesFall(ConstraintFactory factory) {
        return neighbours(factory)
                .filter((from, to) -> from.gapM(to) <= 0)
                .penalizeLong(HardSoftLongScore.ONE_HARD, (from, to) -> PenaltyRules.carryBreaks(from.gapM(to)))
                .asConstraint("carries fall");
    }

    Constraint mostClubs(ConstraintFactory factory) {
        return factory.forEach(ClubSeat.class)
                .groupBy(ClubSeat::bag, ConstraintCollectors.count())
                .filter((bag, clubs) -> clubs > PenaltyRules.MOST_CLUBS)
                .penalizeLong(HardSoftLongScore.ONE_HARD, (bag, clubs) -> PenaltyRules.clubCountBreaks(clubs))
                .asConstraint("most clubs");
    }

    Constraint mostChanges(ConstraintFactory factory) {
        return factory.forEach(ClubSeat.class)
                .groupBy(ClubSeat::bag, ConstraintCollectors.sum(seat -> seat.choice()
                        .changes()))
                .filter((bag, changes) -> changes > bag.mostChanges())
                .penalizeLong(
                        HardSoftLongScore.ONE_HARD,
                        (bag, changes) -> PenaltyRules.changeCountBreaks(changes, bag.mostChanges()))
                .asConstraint("most changes");
    }

    Constraint loft(ConstraintFactory factory) {
        return own(factory, "loft", OwnMicropoints::loft);
    }

    Constraint lie(ConstraintFactory factory) {
        return own(factory, "lie", OwnMicropoints::lie);
    }

    Constraint sits(ConstraintFactory factory) {
        return own(factory, "sits", OwnMicropoints::sits);
    }

    Constraint carry(ConstraintFactory factory) {
        return own(factory, "carry", OwnMicropoints::carry);
    }

    Constraint change(ConstraintFactory factory) {
        return own(factory, "change", OwnMicropoints::change);
    }

    Constraint gap(ConstraintFactory factory) {
        return neighbours(factory)
                .penalizeLong(
                        HardSoftLongScore.ONE_SOFT,
                        (from, to) -> PenaltyRules.gapMicropoints(from.bag().gapAim(), from.gapM(to), from.gapWishM()))
                .asConstraint("gap");
    }

    private static Constraint own(
            ConstraintFactory factory, String measure, ToLongFunction<OwnMicropoints> micropoints) {
        return factory.forEach(ClubSeat.class)
                .penalizeLong(
                        HardSoftLongScore.ONE_SOFT,
                        seat -> micropoints.applyAsLong(seat.choice().own()))
                .asConstraint(measure);
    }

    /** Each club that carries with the next one in the same bag. */
    private static BiConstraintStream<ClubSeat, ClubSeat> neighbours(ConstraintFactory factory) {
        return factory.forEach(ClubSeat.class)
                .filter(ClubSeat::hasNext)
                .join(ClubSeat.class, Joiners.equal(ClubSeat::nextId, ClubSeat::id));
    }
}
