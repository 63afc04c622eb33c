package org.bagwright.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.ClubSketch;
import org.bagwright.GolferSketch;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.club.BendRange;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;

/**
 * A golfer with 6 to 14 clubs, longest first: sleeves on the long ones, bends allowed on some of the short ones.
 *
 * @param golfer the golfer
 * @param clubs his clubs
 * @param sleeves the sleeves on them
 */
record HiddenBag(Golfer golfer, List<Club> clubs, List<Sleeve> sleeves) {
    static final String NAME = "Hidden";
    static final double M_PER_IN = 0.0254;
    private static final double MPS_PER_MPH = 0.44704;
    private static final int FEWEST = 6;

    private record Plain(String name, ClubKind kind, double loftDeg, double lengthIn) {
        /** The same club with the loft of a place between two, and the length changed by as much as the loft asks for. */
        Plain at(double place) {
            int before = (int) Math.min(Math.floor(place), PLACES.size() - 2.0);
            Plain longer = PLACES.get(before).get(0);
            Plain shorter = PLACES.get(before + 1).get(0);
            double betweenDeg = longer.loftDeg() + (place - before) * (shorter.loftDeg() - longer.loftDeg());
            double perDegIn = (shorter.lengthIn() - longer.lengthIn()) / (shorter.loftDeg() - longer.loftDeg());
            return new Plain(name, kind, betweenDeg, lengthIn + perDegIn * (betweenDeg - loftDeg));
        }
    }

    /** Where two clubs may fill one place, one of them is drawn. Lofts and lengths as commonly sold. */
    private static final List<List<Plain>> PLACES = List.of(
            List.of(new Plain("Driver", ClubKind.DRIVER, 10.5, 45.25)),
            List.of(new Plain("3 wood", ClubKind.WOOD, 15, 43)),
            List.of(new Plain("5 wood", ClubKind.WOOD, 18, 42.25)),
            List.of(new Plain("7 wood", ClubKind.WOOD, 21, 41.75), new Plain("3 hybrid", ClubKind.HYBRID, 20.5, 40.25)),
            List.of(new Plain("4 hybrid", ClubKind.HYBRID, 23, 39.75), new Plain("4 iron", ClubKind.IRON, 23.5, 38.5)),
            List.of(new Plain("5 hybrid", ClubKind.HYBRID, 26, 39.25), new Plain("5 iron", ClubKind.IRON, 26, 38)),
            List.of(new Plain("6 iron", ClubKind.IRON, 29, 37.5)),
            List.of(new Plain("7 iron", ClubKind.IRON, 32.5, 37)),
            List.of(new Plain("8 iron", ClubKind.IRON, 36.5, 36.5)),
            List.of(new Plain("9 iron", ClubKind.IRON, 41, 36)),
            List.of(new Plain("PW", ClubKind.IRON, 45.5, 35.5)),
            List.of(new Plain("GW", ClubKind.WEDGE, 50, 35.25)),
            List.of(new Plain("SW", ClubKind.WEDGE, 54.5, 35)),
            List.of(new Plain("LW", ClubKind.WEDGE, 59, 34.75)));

    Optional<Sleeve> sleeveOf(Club club) {
        return club.sleeve().flatMap(name -> sleeves.stream()
                .filter(sleeve -> sleeve.name().equals(name))
                .findFirst());
    }

    static HiddenBag drawn(Dice dice) {
        double driverMps = Math.max(72, Math.min(115, 95 + dice.normal(9))) * MPS_PER_MPH;
        double ironMps = driverMps * (0.8 + dice.normal(0.012));
        Golfer golfer = new GolferSketch(NAME)
                .speeds(OptionalDouble.of(driverMps), OptionalDouble.of(ironMps))
                .golfer();
        List<Sleeve> sleeves = List.of(
                sleeve("DRIVER", 8, dice.between(1.2, 1.8)),
                sleeve("WOOD", dice.chance(0.5) ? 8 : 4, dice.between(1, 1.6)),
                sleeve("HYBRID", 4, dice.between(0.8, 1.3)));
        List<Club> clubs = new ArrayList<>();
        BendRange bends = dice.chance(0.7) ? new BendRange(2, 1) : BendRange.NONE;
        for (Plain plain : plainClubs(dice)) {
            clubs.add(club(clubs.size() + 1, plain, bends, sleeves, dice));
        }
        return new HiddenBag(golfer, clubs, sleeves);
    }

    /** As many clubs as are drawn, spread evenly over the places, the driver first. */
    private static List<Plain> plainClubs(Dice dice) {
        int last = PLACES.size() - 1;
        int count = FEWEST + dice.below(PLACES.size() - FEWEST + 1);
        List<Plain> clubs = new ArrayList<>(PLACES.get(0));
        for (int club = 1; club < count; club++) {
            double place = Math.min(last, (double) club * last / (count - 1) + dice.between(-0.15, 0.15));
            List<Plain> either = PLACES.get((int) Math.round(place));
            clubs.add(either.get(dice.below(either.size())).at(place));
        }
        return clubs;
    }

    private static Sleeve sleeve(String name, int settings, double bendDeg) {
        List<SleeveSetting> made = new ArrayList<>();
        for (int mark = 0; mark < settings; mark++) {
            made.add(new SleeveSetting(
                    "M" + (mark + 1), List.of(new Ring(12.0 * mark / settings, bendDeg)), true, Optional.empty()));
        }
        return new Sleeve(name, made);
    }

    private static Club club(int slot, Plain plain, BendRange bends, List<Sleeve> sleeves, Dice dice) {
        double lengthM = (plain.lengthIn() + dice.between(-0.2, 0.2)) * M_PER_IN;
        double massKg = plain.kind().usualHeadMassKg(lengthM) + dice.normal(0.002);
        ClubSketch sketch = new ClubSketch(NAME, slot, plain.name(), plain.kind(), "Clubs!C" + (slot + 1))
                .head(plain.loftDeg() + dice.between(-0.3, 0.3), 58 + 8 * (45.25 - plain.lengthIn()) / 10.5)
                .lengthM(lengthM)
                .form(ClubSketch.form(
                        OptionalDouble.of(massKg),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
        if (plain.kind().bendable()) {
            return sketch.bends(bends).made();
        }
        if (plain.kind() == ClubKind.HYBRID && dice.chance(0.5)) {
            return sketch.made();
        }
        Sleeve sleeve = sleeves.get(plain.kind().ordinal());
        String mark =
                sleeve.settings().get(dice.below(sleeve.settings().size())).mark();
        return sketch.sleeve(sleeve.name(), mark).made();
    }
}
