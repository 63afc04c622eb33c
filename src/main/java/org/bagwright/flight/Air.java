package org.bagwright.flight;

import org.bagwright.domain.book.AirConditions;

/**
 * Air as a ball meets it. Its pressure is that of the standard atmosphere 1976 (ISO 2533), good from below the sea to 11 km.
 * Its density follows the formula CIPM-2007 for moist air (Picard, Davis, Glaser and Fujii 2008, Metrologia 45, 149), with
 * 400 micromoles of carbon dioxide per mole: published for 15 to 27 C and 600 to 1100 hPa to 22 millionths; used beyond,
 * where its error stays far below what changes a flight. Its viscosity follows Sutherland's law with the constants of the
 * standard atmosphere.
 *
 * @param densityKgPerM3 density, kg/m3; 0 is a vacuum
 * @param viscosityPaS dynamic viscosity, Pa s
 */
record Air(double densityKgPerM3, double viscosityPaS) {
    private static final double ZERO_CELSIUS_K = 273.15;

    private static final double EARTH_RADIUS_M = 6356766;
    private static final double SEA_LEVEL_K = 288.15;
    private static final double SEA_LEVEL_PA = 101325;
    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double PRESSURE_EXPONENT = 5.255876;

    private static final double GAS_CONSTANT_J_PER_MOL_K = 8.314472;
    private static final double DRY_AIR_KG_PER_MOL = 28.96546e-3;
    private static final double WATER_KG_PER_MOL = 18.01528e-3;

    Air {
        if (!(densityKgPerM3 >= 0 && viscosityPaS > 0)) {
            throw new IllegalArgumentException("air needs a density of 0 or more and a viscosity above 0");
        }
    }

    /** The air of a book: pressure by altitude, density with humidity, viscosity by temperature. */
    static Air of(AirConditions conditions) {
        double pressurePa = standardPressurePa(conditions.altitudeM());
        return new Air(
                moistDensityKgPerM3(conditions.temperatureC(), pressurePa, conditions.humidityRatio()),
                sutherlandViscosityPaS(conditions.temperatureC()));
    }

    /** Pressure of the standard atmosphere in pascals at a geometric height in metres above sea level. */
    static double standardPressurePa(double heightM) {
        double geopotentialM = EARTH_RADIUS_M * heightM / (EARTH_RADIUS_M + heightM);
        double standardK = SEA_LEVEL_K - LAPSE_K_PER_M * geopotentialM;
        return SEA_LEVEL_PA * Math.pow(standardK / SEA_LEVEL_K, PRESSURE_EXPONENT);
    }

    /** Dynamic viscosity in Pa s at a temperature in C. */
    static double sutherlandViscosityPaS(double temperatureC) {
        double temperatureK = temperatureC + ZERO_CELSIUS_K;
        return 1.458e-6 * Math.pow(temperatureK, 1.5) / (temperatureK + 110.4);
    }

    private static double moistDensityKgPerM3(double temperatureC, double pressurePa, double humidityRatio) {
        double temperatureK = temperatureC + ZERO_CELSIUS_K;
        double vapour = vapourFraction(temperatureC, pressurePa, humidityRatio);
        double z = compressibility(temperatureC, pressurePa, vapour);
        double lighter = 1 - vapour * (1 - WATER_KG_PER_MOL / DRY_AIR_KG_PER_MOL);
        return pressurePa * DRY_AIR_KG_PER_MOL / (z * GAS_CONSTANT_J_PER_MOL_K * temperatureK) * lighter;
    }

    private static double vapourFraction(double temperatureC, double pressurePa, double humidityRatio) {
        double temperatureK = temperatureC + ZERO_CELSIUS_K;
        double enhancement = 1.00062 + 3.14e-8 * pressurePa + 5.6e-7 * temperatureC * temperatureC;
        double saturationPa = Math.exp(1.2378847e-5 * temperatureK * temperatureK
                - 1.9121316e-2 * temperatureK
                + 33.93711047
                - 6.3431645e3 / temperatureK);
        return humidityRatio * enhancement * saturationPa / pressurePa;
    }

    private static double compressibility(double temperatureC, double pressurePa, double vapour) {
        double perK = pressurePa / (temperatureC + ZERO_CELSIUS_K);
        double first = 1.58123e-6
                + temperatureC * (-2.9331e-8 + 1.1043e-10 * temperatureC)
                + (5.707e-6 - 2.051e-8 * temperatureC) * vapour
                + (1.9898e-4 - 2.376e-6 * temperatureC) * vapour * vapour;
        double second = 1.83e-11 - 0.765e-8 * vapour * vapour;
        return 1 - perK * first + perK * perK * second;
    }
}
