package org.bagwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.option.PoseNumbers;

/**
 * A true head with a true sleeve, gauged with noise, and the stated club that a fitter would have typed. The readings
 * come from {@link ClubGeometry}, whose gauge pose is tested against a separate program's check table.
 *
 * @param loftDeg true loft on the bore
 * @param lieDeg true lie on the bore
 * @param bendDeg true bend
 * @param offsetH true clock offset of the marks
 */
record Gauge(double loftDeg, double lieDeg, double bendDeg, double offsetH) {
    /** A sleeve with eight marks, one every hour and a half, stated to bend by 1.5 degrees. */
    static final Sleeve STATED = marked(0, 1.5);

    /** What the book says of the club: never quite the truth. */
    static final Bench BENCH = Bench.driver(9.5, 58);

    static Club club() {
        return BENCH.club(Optional.of(STATED));
    }

    static Gauge random(Random random) {
        return new Gauge(
                9.5 + random.nextGaussian() * 0.5,
                58 + random.nextGaussian() * 0.5,
                0.5 + 1.5 * random.nextDouble(),
                random.nextDouble() * 2 - 1);
    }

    private static Sleeve marked(double offsetH, double bendDeg) {
        return Bench.sleeve(IntStream.range(0, 8)
                .mapToObj(mark -> Bench.ringed("m" + mark, true, new Ring((mark * 1.5 + offsetH + 12) % 12, bendDeg)))
                .toArray(SleeveSetting[]::new));
    }

    /** Readings of loft and lie at the given marks, each number with its own noise. */
    List<Reading> readings(Random random, double noiseDeg, int... marks) {
        ClubGeometry truth = Bench.driver(loftDeg, lieDeg).with(marked(offsetH, bendDeg));
        List<Reading> readings = new ArrayList<>();
        for (int mark : marks) {
            PoseNumbers pose = truth.pose(Bench.at("m" + mark));
            readings.add(reading(
                    "m" + mark,
                    pose.gaugeLoftDeg() + random.nextGaussian() * noiseDeg,
                    pose.gaugeLieDeg() + random.nextGaussian() * noiseDeg,
                    readings.size()));
        }
        return readings;
    }

    static Reading reading(String mark, double loftDeg, double lieDeg, int row) {
        return new Reading(
                "G",
                "C",
                Optional.of(mark),
                OptionalDouble.of(loftDeg),
                OptionalDouble.of(lieDeg),
                OptionalDouble.empty(),
                "Readings!A" + (row + 2));
    }

    /** A blunder of some degrees in the loft or the lie of one reading. */
    static List<Reading> blundered(List<Reading> readings, int index, boolean inLoft, double blunderDeg) {
        List<Reading> copy = new ArrayList<>(readings);
        Reading old = readings.get(index);
        double loftDeg = old.loftDeg().getAsDouble() + (inLoft ? blunderDeg : 0);
        double lieDeg = old.lieDeg().getAsDouble() + (inLoft ? 0 : blunderDeg);
        copy.set(index, reading(old.setting().orElseThrow(), loftDeg, lieDeg, index));
        return copy;
    }

    /** So many different marks of the eight, by chance. */
    static int[] marks(Random random, int count) {
        List<Integer> all = new ArrayList<>(IntStream.range(0, 8).boxed().toList());
        java.util.Collections.shuffle(all, random);
        return all.stream().limit(count).mapToInt(Integer::intValue).toArray();
    }
}
