package org.bagwright.domain.units;

/** A unit of length: carries and gaps are written in yards or metres, clubs in inches or millimetres. */
public enum LengthUnit {
    YARD("yd", 0.9144),
    METRE("m", 1),
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
