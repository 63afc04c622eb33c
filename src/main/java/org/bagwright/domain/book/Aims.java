package org.bagwright.domain.book;

import java.util.EnumMap;
import java.util.Map;
import org.bagwright.domain.units.Checks;

/** One aim for every measure. */
public record Aims(Map<Measure, Aim> byMeasure) {
    private static final double M_PER_YD = 0.9144;
    private static final double INERTIA_SPREAD_KG_CM2 = 25;

    public Aims {
        byMeasure = Map.copyOf(byMeasure);
        for (Measure measure : Measure.values()) {
            Checks.that(byMeasure.containsKey(measure), "no aim for " + measure);
        }
    }

    /** What holds for every measure that a book leaves out. */
    public static Aims defaults() {
        Map<Measure, Aim> aims = new EnumMap<>(Measure.class);
        put(aims, Measure.LOFT, 0.5, 1);
        put(aims, Measure.LIE, 1, 0.5);
        put(aims, Measure.SITS, 1, 1);
        put(aims, Measure.CARRY, 5 * M_PER_YD, 1);
        put(aims, Measure.GAP, 3 * M_PER_YD, 2);
        put(aims, Measure.SWINGWEIGHT, 1, 0.5);
        put(aims, Measure.SPREAD, 1, 0);
        put(aims, Measure.CHANGE, 1, 0.05);
        return new Aims(aims);
    }

    /** As {@link #defaults}, with the tolerance of spread in the unit of what clubs are matched by. */
    public static Aims defaults(Matching matching) {
        Map<Measure, Aim> aims = new EnumMap<>(defaults().byMeasure());
        if (matching.by() == Matching.By.INERTIA) {
            put(aims, Measure.SPREAD, INERTIA_SPREAD_KG_CM2, 0);
        }
        return new Aims(aims);
    }

    private static void put(Map<Measure, Aim> aims, Measure measure, double tolerance, double importance) {
        aims.put(measure, new Aim(measure, tolerance, importance, false));
    }

    public Aim of(Measure measure) {
        return byMeasure.get(measure);
    }
}
