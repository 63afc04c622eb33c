package org.bagwright.domain.option;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.Swingweight;

/**
 * What would give a club a wanted swingweight or club inertia: mass at its head, or a mass somewhere along its shaft. Added
 * mass counts as a point on the shaft's axis, at the head at the club length. Exact for these.
 */
public final class BuildAdvice {
    private static final double LEAST_SHAFT_MASS_KG = 0.002;
    private static final double SHAFT_MASS_STEP_KG = 0.002;
    private static final double MOST_SHAFT_MASS_KG = 0.02;

    /** A mass so far from the butt end. */
    private record OnShaft(double massKg, double fromButtM) {}

    private enum Wanted {
        SWINGWEIGHT {
            @Override
            double worth(double fromButtM) {
                return fromButtM - Swingweight.FULCRUM_M;
            }

            @Override
            double placeM(double worth) {
                return worth + Swingweight.FULCRUM_M;
            }
        },
        INERTIA {
            @Override
            double worth(double fromButtM) {
                return fromButtM * fromButtM;
            }

            @Override
            double placeM(double worth) {
                return Math.sqrt(worth);
            }
        };

        /** What a kilogram at this place adds. */
        abstract double worth(double fromButtM);

        /** The place where a kilogram adds this much; NaN where there is none. */
        abstract double placeM(double worth);
    }

    private final Wanted wanted;
    private final BuildNumbers now;
    private final double missing;

    private BuildAdvice(Wanted wanted, BuildNumbers now, double missing) {
        this.wanted = wanted;
        this.now = now;
        this.missing = missing;
    }

    /** What gives the club this swingweight. */
    public static BuildAdvice forSwingweight(BuildNumbers now, Swingweight target) {
        return new BuildAdvice(
                Wanted.SWINGWEIGHT, now, target.momentKgM() - now.swingweight().momentKgM());
    }

    /**
     * What gives the club this inertia.
     *
     * @param targetKgCm2 inertia about the butt end, across the shaft, kg cm2
     */
    public static BuildAdvice forClubInertia(BuildNumbers now, double targetKgCm2) {
        return new BuildAdvice(Wanted.INERTIA, now, targetKgCm2 * 1e-4 - now.clubInertiaKgM2());
    }

    /**
     * Mass to add at the head, kilograms; below 0 to remove it. Empty where the head would have to lose its whole mass, and for a swingweight where the club ends at the fulcrum.
     */
    public OptionalDouble atHeadKg() {
        double massKg = missing / wanted.worth(now.lengthM());
        return massKg > -now.headMassKg() && Double.isFinite(massKg)
                ? OptionalDouble.of(massKg)
                : OptionalDouble.empty();
    }

    /**
     * How far from the butt end, metres, a mass would have to be added to do the same; empty where no place from the butt
     * end to the head does.
     *
     * @param massKg the mass to add, kilograms
     * @throws IllegalArgumentException unless the mass is above 0
     */
    public OptionalDouble placeOnShaftM(double massKg) {
        if (!(massKg > 0)) {
            throw new IllegalArgumentException("mass to add must be above 0, found " + massKg);
        }
        double placeM = wanted.placeM(missing / massKg);
        return placeM >= 0 && placeM <= now.lengthM() ? OptionalDouble.of(placeM) : OptionalDouble.empty();
    }

    /** The least of some usual masses that does the same from a place on the shaft; empty where none does. */
    private Optional<OnShaft> onShaft() {
        for (double massKg = LEAST_SHAFT_MASS_KG; massKg <= MOST_SHAFT_MASS_KG; massKg += SHAFT_MASS_STEP_KG) {
            OptionalDouble placeM = placeOnShaftM(massKg);
            if (placeM.isPresent()) {
                return Optional.of(new OnShaft(massKg, placeM.getAsDouble()));
            }
        }
        return Optional.empty();
    }

    /** What to do on the shaft instead, such as {@code 4.0 g on the shaft 20.1 in from the butt end}. */
    public Optional<String> shaftWords(LengthUnit length) {
        return onShaft()
                .map(mass -> grams(mass.massKg()) + " g on the shaft "
                        + Numbers.fixed(length.fromM(mass.fromButtM()), length == LengthUnit.INCH ? 1 : 0) + " "
                        + length.label() + " from the butt end");
    }

    private static String grams(double massKg) {
        return Numbers.fixed(massKg * 1000, 1);
    }
}
