package org.bagwright.domain.book;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.StatedLimit;
import org.bagwright.domain.units.Checks;

/** One aim for every measure. */
public record Aims(Map<Measure, Aim> byMeasure) {
    private static final double LANDING_TOLERANCE_DEG = 1;

    public Aims {
        byMeasure = Map.copyOf(byMeasure);
        for (Measure measure : Measure.values()) {
            Checks.that(byMeasure.containsKey(measure), "no aim for " + measure);
        }
    }

    /** What holds for every measure that a book leaves out. */
    public static Aims defaults() {
        return defaults(Matching.DEFAULT);
    }

    /** As {@link #defaults()}, with the tolerance of spread in the unit of what clubs are matched by. */
    public static Aims defaults(Matching matching) {
        Map<Measure, Aim> aims = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            double tolerance = measure.usualToleranceMeasureUnits(matching);
            aims.put(measure, new Aim(measure, tolerance, measure.usualImportancePoints(), false));
        }
        return new Aims(aims);
    }

    /** The same aims, by which carries and gaps count as a plan is made for. */
    public Aims plannedFor(BookSettings.PlanFor planFor) {
        boolean likely = planFor == BookSettings.PlanFor.WHAT_IS_LIKELY;
        return mapped(aim ->
                aim.measure() == Measure.GAP || aim.measure() == Measure.CARRY ? aim.onWhatIsLikely(likely) : aim);
    }

    public Aim of(Measure measure) {
        return byMeasure.get(measure);
    }

    /** How far a value is beyond a limit, in thousandths of the tolerance of what is limited, rounded up. */
    public long breakThousandths(StatedLimit limit, double valueMeasureUnits) {
        return Aim.thousandths(limit.beyondMeasureUnits(valueMeasureUnits)
                / limitToleranceMeasureUnits(limit.kind().quantity()));
    }

    /** By what breaks of a limit are measured. */
    public double limitToleranceMeasureUnits(LimitKind.Quantity quantity) {
        return switch (quantity) {
            case SITS -> of(Measure.SITS).toleranceMeasureUnits();
            case GAP -> of(Measure.GAP).toleranceMeasureUnits();
            case CARRY -> of(Measure.CARRY).toleranceMeasureUnits();
            case LANDING -> LANDING_TOLERANCE_DEG;
        };
    }

    /** The aims with something changed in each. */
    public Aims mapped(UnaryOperator<Aim> change) {
        Map<Measure, Aim> changed = new EnumMap<>(Measure.class);
        byMeasure.forEach((measure, aim) -> changed.put(measure, change.apply(aim)));
        return new Aims(changed);
    }
}
