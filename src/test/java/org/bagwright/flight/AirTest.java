package org.bagwright.flight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bagwright.domain.book.AirConditions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirTest {
    /** Standard atmosphere 1976 / ISO 2533, at geometric heights: 1000 and 2000 m [quoted], 500 and 1609.344 m [own]. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({
        "0,        1.2250,  0.00005",
        "500,      1.16727, 0.000005",
        "1000,     1.1117,  0.00005",
        "1609.344, 1.04666, 0.000005",
        "2000,     1.0066,  0.00005"
    })
    void standardDensity_isThatOfTheTable(double heightM, double expectedKgPerM3, double lastDigit) {
        double densityKgPerM3 = Air.standardPressurePa(heightM) / (287.05287 * standardK(heightM));
        assertEquals(expectedKgPerM3, densityKgPerM3, lastDigit * 1.01);
    }

    /** Temperature of the standard atmosphere: 288.15 K less 6.5 K a geopotential kilometre. */
    private static double standardK(double heightM) {
        return 288.15 - 0.0065 * 6356766 * heightM / (6356766 + heightM);
    }

    /** CIPM-2007, Picard et al. 2008, Metrologia 45, 149, at 20 C and 101325 Pa [own from the published formula]. */
    @Tag("analytic")
    @ParameterizedTest
    @CsvSource({"0, 1.20456", "0.5, 1.19931", "1, 1.19409"})
    void moistAirDensity_isThatOfTheFormula(double humidityRatio, double expectedKgPerM3) {
        Air air = Air.of(new AirConditions(20, 0, humidityRatio, 0, 0));
        assertEquals(expectedKgPerM3, air.densityKgPerM3(), 0.000006);
    }

    /** Standard atmosphere 1976, sea level: 1.7894e-5 Pa s in its table [memory]. */
    @Tag("published")
    @Test
    void viscosity_atSeaLevelIsThatOfTheStandardAtmosphere() {
        assertEquals(1.7894e-5, Air.sutherlandViscosityPaS(15), 0.00005e-5);
    }

    @Tag("analytic")
    @Test
    void bookAir_takesPressureFromAltitudeAndItsOwnTemperature() {
        Air low = Air.of(new AirConditions(20, 0, 0.5, 0, 0));
        Air high = Air.of(new AirConditions(20, 1609.344, 0, 0, 0));
        // Five decimals.
        assertEquals(1.19931, low.densityKgPerM3(), 0.000005);
        // Dry air is nearly ideal: density goes with pressure over temperature.
        assertEquals(1.04666 * standardK(1609.344) / 293.15, high.densityKgPerM3(), 0.0005);
        assertEquals(low.viscosityPaS(), high.viscosityPaS());
    }

    @Tag("analytic")
    @ParameterizedTest
    @CsvSource({"-30, -450, 0", "55, 5000, 1", "55, -450, 1", "-30, 5000, 1"})
    void bookAir_isSensibleAtEveryEndOfTheLimits(double temperatureC, double altitudeM, double humidityRatio) {
        Air air = Air.of(new AirConditions(temperatureC, altitudeM, humidityRatio, 0, 0));
        double idealKgPerM3 = Air.standardPressurePa(altitudeM) / (287.05 * (temperatureC + 273.15));
        assertTrue(Math.abs(air.densityKgPerM3() / idealKgPerM3 - 1) < 0.12, () -> air + " against " + idealKgPerM3);
    }
}
