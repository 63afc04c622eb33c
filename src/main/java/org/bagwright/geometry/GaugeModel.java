package org.bagwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;

/**
 * What a gauge is expected to read on a club, as a function of a state of five numbers in degrees: design loft, lie and face,
 * and the bend as a vector along and across the marks. In this form the readings are nearly linear in the state and a
 * bend of 0 is no special case; the bend is the vector's length, the clock offset its direction.
 */
final class GaugeModel {
    private static final double SAME = 1e-9;

    private final SleeveOnHead sleeved;
    private final Bend bend;
    private final double statedBendDeg;
    private final Optional<String> statedAt;

    GaugeModel(Club club, Optional<Sleeve> sleeve) {
        sleeved = SleeveOnHead.of(club, sleeve);
        bend = club.today().bend();
        statedAt = club.head().statedAt();
        statedBendDeg = sleeve.stream()
                .flatMap(value -> value.settings().stream())
                .flatMap(setting -> rings(setting).stream())
                .mapToDouble(Ring::bendDeg)
                .max()
                .orElse(0);
    }

    /**
     * One number that was read.
     *
     * @param readingIndex of which reading
     * @param kind what was read: loft, lie or face
     * @param readDeg the number without today's hosel bend, degrees
     * @param rings the rings as marked at its setting
     */
    record Value(int readingIndex, Unknown kind, double readDeg, List<Ring> rings) {}

    boolean hasSleeve() {
        return sleeved.sleeve().isPresent();
    }

    /** The state that the book states. */
    double[] stated() {
        HeadDesign head = sleeved.design();
        return new double[] {head.loftDeg(), head.lieDeg(), head.faceDeg(), statedBendDeg, 0};
    }

    List<Value> values(List<Reading> readings) {
        List<Value> values = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            Reading reading = readings.get(i);
            List<Ring> rings =
                    reading.setting().map(mark -> rings(sleeved.setting(mark))).orElse(List.of());
            add(values, i, Unknown.LOFT, reading.loftDeg(), bend.loftDeg(), rings);
            add(values, i, Unknown.LIE, reading.lieDeg(), bend.lieDeg(), rings);
            add(values, i, Unknown.FACE, reading.faceDeg(), 0, rings);
        }
        return values;
    }

    private static void add(
            List<Value> values, int index, Unknown kind, OptionalDouble read, double bentDeg, List<Ring> rings) {
        read.ifPresent(readDeg -> values.add(new Value(index, kind, readDeg - bentDeg, rings)));
    }

    /** The loft or lie at the setting at which the club states its head, as a number not read. */
    Value atStated(Unknown kind) {
        List<Ring> rings = statedAt.map(mark -> rings(sleeved.setting(mark))).orElse(List.of());
        return new Value(-1, kind, Double.NaN, rings);
    }

    /** Whether all lofts and lies were read with the shaft leaning one way, as far as the marks say. */
    boolean atOneHour(List<Value> values) {
        List<Tilt> tilts = values.stream()
                .filter(value -> value.kind() != Unknown.FACE)
                .map(value -> Tilt.of(value.rings()))
                .toList();
        return tilts.stream()
                .allMatch(tilt -> tilt.shaft().distance(tilts.get(0).shaft()) < SAME);
    }

    /** What the state expects of one number, degrees; NaN for a state that no head can have. */
    double expectedDeg(double[] state, Value value) {
        if (value.kind() == Unknown.FACE) {
            return state[Unknown.FACE.index()];
        }
        if (!possible(state)) {
            return Double.NaN;
        }
        HeadDesign head = new HeadDesign(state[0], state[1], state[2]);
        GaugeReading reading = head.gauge(head.shaft(tilt(state, value.rings())));
        return value.kind() == Unknown.LOFT ? reading.loftDeg() : reading.lieDeg();
    }

    private static boolean possible(double[] state) {
        return Math.abs(state[0]) < 90 && state[1] > 0 && state[1] < 90 && Math.abs(state[2]) < 45;
    }

    private Tilt tilt(double[] state, List<Ring> rings) {
        double bendDeg = Math.hypot(state[3], state[4]);
        double offsetRad = Math.atan2(state[4], state[3]);
        Tilt tilt = Tilt.STRAIGHT;
        for (int i = rings.size() - 1; i >= 0; i--) {
            Ring ring = rings.get(i);
            double shareRatio = statedBendDeg > 0 ? ring.bendDeg() / statedBendDeg : 1;
            double clockRad = ring.clockH() * Tilt.RAD_PER_H + offsetRad;
            tilt = tilt.turned(clockRad, Math.toRadians(shareRatio * bendDeg));
        }
        return tilt;
    }

    /** The rings as marked; a setting with a rated table has the one that its table makes on this head. */
    private List<Ring> rings(SleeveSetting setting) {
        if (setting.ratedShaft().isEmpty()) {
            return setting.rings();
        }
        Tilt tilt = sleeved.design().tilt(sleeved.shaft(Optional.of(setting)));
        return List.of(new Ring(tilt.clockH(), tilt.bendDeg()));
    }
}
