package org.bagwright.search.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.bagwright.ClubSketch;
import org.bagwright.GolferSketch;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.Limits;
import org.bagwright.domain.club.StatedLimit;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.ClubWishes;
import org.bagwright.domain.option.ExpectedShot;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.option.SlotOptions;

/** Small books whose golfers and clubs have limits of every kind, and whose reach counts in every way. */
public final class LimitedBooks {
    private final Random random;

    private LimitedBooks(long seed) {
        random = new Random(seed * 0x9E3779B97F4A7C15L + 17);
    }

    /** A small or rich book of this seed with limits. */
    public static BookOptions draw(long seed) {
        LimitedBooks draw = new LimitedBooks(seed);
        BookOptions bare = seed % 2 == 0 ? TestBooks.small(seed) : TestBooks.rich(seed);
        return new BookOptions(bare.bags().stream().map(draw::bag).toList(), bare.stock());
    }

    /** An option whose club has these limits, in effect and in its row. */
    public static Option with(Option bare, Limits limits) {
        Club club = ClubSketch.like(bare.club()).limits(limits).made();
        ClubSetup made = bare.setup().orElseThrow();
        return with(bare, setup(club, made, limits, made.pose(), made.shot()), Aims.defaults());
    }

    private BagOptions bag(BagOptions bare) {
        Aim reach = new Aim(Measure.REACH, 1 + random.nextInt(4), random.nextInt(3), random.nextInt(4) == 0);
        Aims aims = bare.aims().mapped(aim -> aim.measure() == Measure.REACH ? reach : aim);
        Golfer golfer =
                GolferSketch.like(bare.golfer()).limits(Limits.of(ofGolfer())).golfer();
        List<SlotOptions> slots =
                bare.slots().stream().map(slot -> slot(slot, golfer, aims)).toList();
        return new BagOptions(golfer, slots, bare.gapWishM(), aims);
    }

    private List<StatedLimit> ofGolfer() {
        List<StatedLimit> limits = new ArrayList<>();
        add(limits, 2, LimitKind.MOST_OPEN, -2 * random.nextDouble());
        add(limits, 2, LimitKind.MOST_CLOSED, 2 * random.nextDouble());
        add(limits, 2, LimitKind.GAP_LEAST, 6 + 5 * random.nextDouble());
        add(limits, 3, LimitKind.GAP_MOST, 11 + 6 * random.nextDouble());
        return limits;
    }

    private List<StatedLimit> ofClub(Club club) {
        List<StatedLimit> limits = new ArrayList<>();
        double usualM = 240 - 13 * club.slot();
        add(limits, 3, LimitKind.GAP_LEAST, 6 + 5 * random.nextDouble());
        add(limits, 5, LimitKind.GAP_MOST, 11 + 6 * random.nextDouble());
        add(limits, 4, LimitKind.CARRY_LEAST, usualM - 4 * random.nextDouble());
        add(limits, 4, LimitKind.CARRY_MOST, usualM + 4 * random.nextDouble());
        add(limits, 4, LimitKind.LANDING_LEAST, 38 + 8 * random.nextDouble());
        return limits;
    }

    private void add(List<StatedLimit> limits, int seldom, LimitKind kind, double value) {
        if (random.nextInt(seldom) == 0) {
            limits.add(new StatedLimit(kind, value, "Clubs!" + kind.ordinal()));
        }
    }

    private SlotOptions slot(SlotOptions bare, Golfer golfer, Aims aims) {
        Map<Club, Club> limited = new HashMap<>();
        bare.clubs()
                .forEach(club -> limited.computeIfAbsent(club, plain -> ClubSketch.like(plain)
                        .limits(Limits.of(ofClub(plain)))
                        .made()));
        List<Option> options = bare.options().stream()
                .map(option -> option.isEmpty() ? option : option(option, limited.get(option.club()), golfer, aims))
                .toList();
        return new SlotOptions(
                bare.slot(),
                bare.clubs().stream().map(limited::get).toList(),
                options,
                bare.todayIndex(),
                bare.openIndexes());
    }

    private Option option(Option bare, Club club, Golfer golfer, Aims aims) {
        ClubSetup made = bare.setup().orElseThrow();
        PoseNumbers pose = new PoseNumbers(
                made.pose().gauge(),
                made.pose().address(),
                new PoseNumbers.Resting(6 * random.nextDouble() - 3, 30),
                0);
        double landingDeg = 38 + 8 * random.nextDouble();
        Optional<ShotPrediction> shot =
                made.shot().map(flown -> new ShotPrediction(50, 15, 5000, flown.carryM(), 25, landingDeg, 0, 0));
        Limits limits = club.freedom().limits().orElse(golfer.limits());
        return with(bare, setup(club, made, limits, pose, shot), aims);
    }

    private static ClubSetup setup(
            Club club, ClubSetup made, Limits limits, PoseNumbers pose, Optional<ShotPrediction> shot) {
        ClubWishes wishes = new ClubWishes(made.wishes().byMeasure(), limits);
        return new ClubSetup(
                club, wishes, made.choice(), pose, 0, shot.map(ExpectedShot::certain), made.build(), made.match());
    }

    private static Option with(Option bare, ClubSetup setup, Aims aims) {
        return new Option(
                bare.key(),
                Optional.of(setup),
                bare.changes(),
                setup.withLimits(bare.terms(), aims),
                bare.closedReasons(),
                bare.takes());
    }
}
