package org.bagwright.domain.book;

import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;

/**
 * The air in which balls fly, with a steady wind that is the same at every height. Pressure follows from the altitude by the standard atmosphere.
 *
 * @param temperatureC air temperature, degrees Celsius
 * @param altitudeM geometric height above sea level, metres
 * @param humidityRatio relative humidity, 0 to 1
 * @param headWindMps wind against the shot, m/s; negative is a tail wind
 * @param crossWindMps wind from the left of a golfer who looks at the target, m/s; negative is from the right
 */
public record AirConditions(
        double temperatureC, double altitudeM, double humidityRatio, double headWindMps, double crossWindMps) {
    public static final AirConditions DEFAULT = new AirConditions(20, 0, 0.5, 0, 0);

    public AirConditions {
        Checks.within(Limit.AIR_TEMPERATURE_C, temperatureC, "air temperature");
        Checks.within(Limit.ALTITUDE_M, altitudeM, "altitude");
        Checks.within(Limit.HUMIDITY_RATIO, humidityRatio, "humidity");
        Checks.within(Limit.WIND_MPS, headWindMps, "head wind");
        Checks.within(Limit.WIND_MPS, crossWindMps, "cross wind");
    }

    /** The same air seen in a mirror: what a left-hander meets where all else is given as for a right-hander. */
    public AirConditions mirrored() {
        return new AirConditions(temperatureC, altitudeM, humidityRatio, headWindMps, 0 - crossWindMps);
    }
}
