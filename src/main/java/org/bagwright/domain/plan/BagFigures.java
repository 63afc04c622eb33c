package org.bagwright.domain.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.OwnTerms;
import org.bagwright.domain.units.Checks;

/** A few numbers that tell at a glance how good a bag is. */
public final class BagFigures {

    private BagFigures() {}

    /**
     * How far one club, or one gap, is from what is wanted.
     *
     * @param measure by what it is judged: loft, lie, sits, carry or gap
     * @param index position of its slot in the bag; for a gap that of the longer club
     * @param toleranceRatio the deviation over the tolerance of that measure, 0 or more
     */
    public record Miss(Measure measure, int index, double toleranceRatio) {

        public Miss {
            Checks.notNegative(toleranceRatio, "miss");
        }
    }

    /**
     * How uneven the gaps of a bag are: the root of the mean square of gap less wish, metres. Empty for a bag without a
     * gap.
     */
    public static OptionalDouble unevennessM(BagState state) {
        return state.gaps().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.sqrt(state.gaps().stream()
                        .mapToDouble(gap -> (gap.gapM() - gap.wishM()) * (gap.gapM() - gap.wishM()))
                        .average()
                        .orElseThrow()));
    }

    /** The worst of all misses in loft, lie, sits, carry and gap; the first of equals, empty for a bag without a club. */
    public static Optional<Miss> worstMiss(BagResult bag, BagState state, Aims aims) {
        List<Miss> misses = new ArrayList<>();
        List<Option> options = bag.optionsOf(state);
        for (int index = 0; index < options.size(); index++) {
            int slot = index;
            options.get(index).setup().ifPresent(setup -> setup.deviations(
                            bag.golfer().sitsRange())
                    .forEach((measure, off) -> {
                        if (measure != Measure.SWINGWEIGHT) {
                            misses.add(miss(measure, slot, off, aims));
                        }
                    }));
        }
        for (GapTerm gap : state.gaps()) {
            misses.add(miss(Measure.GAP, gap.fromIndex(), gap.gapM() - gap.wishM(), aims));
        }
        return misses.stream()
                .min(Comparator.comparingDouble(Miss::toleranceRatio).reversed());
    }

    /** The penalty of a bag by measure, points; every measure has its share, 0 where it costs nothing. */
    public static Map<Measure, Double> pointsByMeasure(BagResult bag, BagState state) {
        Map<Measure, Double> points = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            points.put(measure, 0.0);
        }
        for (Option option : bag.optionsOf(state)) {
            OwnTerms terms = option.terms();
            points.merge(Measure.LOFT, terms.loftPoints(), Double::sum);
            points.merge(Measure.LIE, terms.liePoints(), Double::sum);
            points.merge(Measure.SITS, terms.sitsPoints(), Double::sum);
            points.merge(Measure.CARRY, terms.carryPoints(), Double::sum);
            points.merge(Measure.SWINGWEIGHT, terms.swingweightPoints(), Double::sum);
            points.merge(Measure.CHANGE, terms.changePoints(), Double::sum);
        }
        state.gaps().forEach(gap -> points.merge(Measure.GAP, gap.penaltyPoints(), Double::sum));
        state.spreads().forEach(spread -> points.merge(Measure.SPREAD, spread.penaltyPoints(), Double::sum));
        return points;
    }

    /** What the greatest of all relaxations would bring, points; empty where none is known. */
    public static OptionalDouble headRoomPoints(BagResult bag) {
        return bag.relaxations().stream().mapToDouble(Relaxation::gainPoints).max();
    }

    private static Miss miss(Measure measure, int index, double deviation, Aims aims) {
        return new Miss(measure, index, Math.abs(deviation) / aims.of(measure).toleranceMeasureUnits());
    }
}
