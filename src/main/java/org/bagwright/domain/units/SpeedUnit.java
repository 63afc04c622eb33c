package org.bagwright.domain.units;

/** The unit in which head and ball speeds are written. */
public enum SpeedUnit {
    MILES_PER_HOUR("mph", 0.44704),
    METRES_PER_SECOND("m/s", 1),
    KILOMETRES_PER_HOUR("km/h", 1 / 3.6);

    private final String label;
    private final double mpsPerUnit;

    SpeedUnit(String label, double mpsPerUnit) {
        this.label = label;
        this.mpsPerUnit = mpsPerUnit;
    }

    public String label() {
        return label;
    }

    /** A value in this unit, in metres per second. */
    public double toMps(double value) {
        return value * mpsPerUnit;
    }

    /** A value in metres per second, in this unit. */
    public double fromMps(double valueMps) {
        return valueMps / mpsPerUnit;
    }
}
