package org.bagwright.flight;

import org.bagwright.domain.book.AirConditions;

/**
 * Air as a ball meets it.
 *
 * @param densityKgPerM3 density, kg/m3; 0 is a vacuum
 * @param viscosityPaS dynamic viscosity, Pa s
 */
record Air(double densityKgPerM3, double viscosityPaS) {
    private static final double ZERO_CELSIUS_K = 273.15;

    Air {
        if (!(densityKgPerM3 >= 0 && viscosityPaS > 0)) {
            throw new IllegalArgumentException("air needs a density of 0 or more and a viscosity above 0");
        }
    }

    /** The air of a book: pressure by the standard atmosphere, density with humidity, viscosity by temperature. */
    static Air of(AirConditions conditions) {
        double pressurePa = StandardAtmosphere.pressurePa(conditions.altitudeM());
        return new Air(
                MoistAir.densityKgPerM3(conditions.temperatureC(), pressurePa, conditions.humidityRatio()),
                sutherlandViscosityPaS(conditions.temperatureC()));
    }

    /** Sutherland's law with the constants of the standard atmosphere 1976. */
    static double sutherlandViscosityPaS(double temperatureC) {
        double temperatureK = temperatureC + ZERO_CELSIUS_K;
        return 1.458e-6 * Math.pow(temperatureK, 1.5) / (temperatureK + 110.4);
    }
}
