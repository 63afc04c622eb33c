package org.bagwright.planning.sureness;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.bagwright.ClubSketch;
import org.bagwright.GolferSketch;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.Limits;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.CarryOrigin;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.ClubWishes;
import org.bagwright.domain.option.ExpectedShot;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.option.WantedRange;
import org.bagwright.domain.units.Swingweight;

/**
 * A bag of one slot that several clubs may fill, all of which should carry to a target so far away that a metre more is
 * worth one point wherever a club carries: choices are then linear in the carries.
 */
final class ToyBag {
    private static final double TARGET_M = 1e7;

    private final List<Club> clubs = new ArrayList<>();
    private final List<Option> options = new ArrayList<>();
    private CarryOrigin origin = CarryOrigin.LENT;

    /** With another origin of the carries of the clubs that come after. */
    ToyBag from(CarryOrigin other) {
        origin = other;
        return this;
    }

    /** One more club. */
    ToyBag club(double carryM, double[] sharedM, double[] ownM) {
        Club club = new ClubSketch("Golfer", 1, "Club " + (1 + clubs.size()), ClubKind.IRON, "Clubs!C2")
                .head(30, 62)
                .made();
        clubs.add(club);
        return option(carryM, sharedM, ownM);
    }

    /** One more option of the last club. */
    ToyBag option(double carryM, double[] sharedM, double[] ownM) {
        Club club = clubs.get(clubs.size() - 1);
        PoseNumbers pose = new PoseNumbers(
                new PoseNumbers.Gauge(30, 62),
                new PoseNumbers.Address(30, 0, 0, 0, 0, 0),
                new PoseNumbers.Resting(0, 30),
                0);
        ClubSetup setup = new ClubSetup(
                club,
                new ClubWishes(Map.of(Measure.CARRY, WantedRange.exactly(TARGET_M)), Limits.NONE),
                new Choice(Optional.empty(), Bend.NONE),
                pose,
                0,
                Optional.of(new ExpectedShot(
                        new ShotPrediction(50, 15, 5000, carryM, 25, 45, 0, 0),
                        CarryDoubt.of(sharedM, ownM),
                        origin,
                        false)),
                new BuildNumbers(0.94, 0.27, 0.41, new Swingweight(30), 0.75, 0.27, 2.5e-4),
                Optional.empty());
        options.add(new Option("option " + options.size(), Optional.of(setup), 0, Terms.NONE, Set.of(), List.of()));
        return this;
    }

    /** The bag; the first option is today's. */
    BagOptions bag() {
        Aim carry = new Aim(Measure.CARRY, Math.sqrt(2 * TARGET_M), 1, false);
        Aims aims = Aims.defaults()
                .mapped(aim -> aim.measure() == Measure.CARRY
                        ? carry
                        : new Aim(aim.measure(), aim.toleranceMeasureUnits(), 0, false));
        SlotOptions slot = new SlotOptions(
                1, clubs, options, 0, IntStream.range(0, options.size()).boxed().toList());
        return new BagOptions(new GolferSketch("Golfer").golfer(), List.of(slot), 10, aims);
    }
}
