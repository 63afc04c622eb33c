package org.bagwright.domain;

/**
 * The air in which balls fly. Pressure follows from the altitude by the standard atmosphere.
 *
 * @param temperatureC air temperature, degrees Celsius
 * @param altitudeM geometric height above sea level, metres
 * @param humidityRatio relative humidity, 0 to 1
 */
public record AirConditions(double temperatureC, double altitudeM, double humidityRatio) {
    public static final AirConditions DEFAULT = new AirConditions(20, 0, 0.5);

    public AirConditions {
        Checks.within(Limit.AIR_TEMPERATURE_C, temperatureC, "air temperature");
        Checks.within(Limit.ALTITUDE_M, altitudeM, "altitude");
        Checks.within(Limit.HUMIDITY_RATIO, humidityRatio, "humidity");
    }
}
