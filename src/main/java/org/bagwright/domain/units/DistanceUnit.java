package org.bagwright.domain.units;

/** The unit in which carries and gaps are written. */
public enum DistanceUnit {
    YARD("yd", 0.9144),
    METRE("m", 1);

    private final String label;
    private final double metresPerUnit;

    DistanceUnit(String label, double metresPerUnit) {
        this.label = label;
        this.metresPerUnit = metresPerUnit;
    }

    public String label() {
        return label;
    }

    /** A value in this unit, in metres. */
    public double toM(double value) {
        return value * metresPerUnit;
    }

    /** A value in metres, in this unit. */
    public double fromM(double valueM) {
        return valueM / metresPerUnit;
    }
}
