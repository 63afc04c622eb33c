package org.bagwright.flight;

/**
 * Density of moist air by the formula CIPM-2007 (Picard, Davis, Glaser and Fujii 2008, Metrologia 45, 149), with 400
 * micromoles of carbon dioxide per mole. Published for 15 to 27 C and 600 to 1100 hPa to 22 millionths; used beyond,
 * where it stays well inside what a ball can tell.
 */
final class MoistAir {
    private static final double ZERO_CELSIUS_K = 273.15;
    private static final double GAS_CONSTANT_J_PER_MOL_K = 8.314472;
    private static final double DRY_AIR_KG_PER_MOL = 28.96546e-3;
    private static final double WATER_KG_PER_MOL = 18.01528e-3;

    private MoistAir() {}

    /**
     * Density in kg/m3.
     *
     * @param temperatureC temperature, C
     * @param pressurePa pressure, Pa
     * @param humidityRatio relative humidity, 0 to 1
     */
    static double densityKgPerM3(double temperatureC, double pressurePa, double humidityRatio) {
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
