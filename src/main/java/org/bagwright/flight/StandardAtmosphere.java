package org.bagwright.flight;

/** The lowest layer of the standard atmosphere 1976 (ISO 2533), good from below the sea to 11 km. */
final class StandardAtmosphere {
    private static final double EARTH_RADIUS_M = 6356766;
    private static final double SEA_LEVEL_K = 288.15;
    private static final double SEA_LEVEL_PA = 101325;
    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double PRESSURE_EXPONENT = 5.255876;
    private static final double GAS_CONSTANT_J_PER_KG_K = 287.05287;

    private StandardAtmosphere() {}

    /** Pressure in pascals at a geometric height in metres above sea level. */
    static double pressurePa(double heightM) {
        return SEA_LEVEL_PA * Math.pow(temperatureK(heightM) / SEA_LEVEL_K, PRESSURE_EXPONENT);
    }

    /** Density in kg/m3 of the standard, dry atmosphere at a geometric height in metres above sea level. */
    static double densityKgPerM3(double heightM) {
        return pressurePa(heightM) / (GAS_CONSTANT_J_PER_KG_K * temperatureK(heightM));
    }

    private static double temperatureK(double heightM) {
        double geopotentialM = EARTH_RADIUS_M * heightM / (EARTH_RADIUS_M + heightM);
        return SEA_LEVEL_K - LAPSE_K_PER_M * geopotentialM;
    }
}
