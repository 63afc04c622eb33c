package org.bagwright.domain.units;

/** The unit in which club lengths are written. */
public enum LengthUnit {
    INCH("in", 0.0254),
    MILLIMETRE("mm", 0.001);

    private final String label;
    private final double metresPerUnit;

    LengthUnit(String label, double metresPerUnit) {
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
