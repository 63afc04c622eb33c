package org.bagwright.planning;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.bagwright.domain.Aims;
import org.bagwright.domain.ClubSetup;
import org.bagwright.domain.Golfer;
import org.bagwright.domain.Measure;
import org.bagwright.domain.Option;
import org.bagwright.domain.Swingweight;
import org.bagwright.domain.Targets;

/** By how much one set-up of a club is off by measure, and which of its own musts it breaks. */
final class OwnMusts {
    /** The measures that a club has by itself. */
    static final List<Measure> MEASURES =
            List.of(Measure.LOFT, Measure.LIE, Measure.SITS, Measure.CARRY, Measure.SWINGWEIGHT);

    private final Golfer golfer;
    private final Aims aims;

    OwnMusts(Golfer golfer, Aims aims) {
        this.golfer = golfer;
        this.aims = aims;
    }

    /** The deviation of every measure for which the club has a target, in the measure's unit. */
    Map<Measure, Double> deviations(ClubSetup setup) {
        Targets targets = setup.club().targets();
        Map<Measure, Double> off = new EnumMap<>(Measure.class);
        put(off, Measure.LOFT, setup.pose().gaugeLoftDeg(), targets.loftDeg());
        put(
                off,
                Measure.LIE,
                setup.pose().gaugeLieDeg(),
                OptionalDouble.of(setup.club().lieTargetDeg()));
        off.put(Measure.SITS, golfer.sitsRange().outsideDeg(setup.pose().sitsClosedDeg()));
        setup.shot().ifPresent(shot -> put(off, Measure.CARRY, shot.carryM(), targets.carryM()));
        targets.swingweight()
                .map(Swingweight::scalePoints)
                .ifPresent(target ->
                        off.put(Measure.SWINGWEIGHT, setup.build().swingweight().scalePoints() - target));
        return off;
    }

    private static void put(Map<Measure, Double> off, Measure measure, double value, OptionalDouble target) {
        target.ifPresent(wanted -> off.put(measure, value - wanted));
    }

    /** What an option breaks of one measure's must, thousandths of a tolerance. */
    long breaks(Option option, Measure measure) {
        return option.setup()
                .map(setup -> deviations(setup).get(measure))
                .map(off -> aims.of(measure).hardBreakThousandths(off))
                .orElse(0L);
    }
}
