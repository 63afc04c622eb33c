package org.bagwright.balance;

import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;

/** The figures from which a club's balance is worked out, each of which a book may leave blank. */
public enum BalanceFigure {
    LENGTH("length", Kind.LENGTH),
    HEAD_MASS("head mass", Kind.MASS),
    HEAD_INERTIA("head inertia", Kind.INERTIA),
    SHAFT_MASS("shaft mass", Kind.MASS),
    SHAFT_BALANCE("shaft balance", Kind.LENGTH),
    GRIP_MASS("grip mass", Kind.MASS);

    private static final double G_PER_KG = 1000;
    private static final double G_CM2_PER_KG_M2 = 1e7;

    private final String label;
    private final Kind kind;

    BalanceFigure(String label, Kind kind) {
        this.label = label;
        this.kind = kind;
    }

    private enum Kind {
        LENGTH,
        MASS,
        INERTIA
    }

    /** The figure as people say it. */
    public String label() {
        return label;
    }

    /** A value as people read it, without its unit. */
    public String text(double valueMeasureUnits, LengthUnit length) {
        return switch (kind) {
            case LENGTH -> Numbers.trimmed(length.fromM(valueMeasureUnits), length == LengthUnit.INCH ? 2 : 0);
            case MASS -> Numbers.trimmed(valueMeasureUnits * G_PER_KG, 0);
            case INERTIA -> Numbers.trimmed(valueMeasureUnits * G_CM2_PER_KG_M2, 0);
        };
    }

    /** The unit of {@link #text}, such as {@code g}. */
    public String unitText(LengthUnit length) {
        return switch (kind) {
            case LENGTH -> length.label() + (this == SHAFT_BALANCE ? " from the butt" : "");
            case MASS -> "g";
            case INERTIA -> "g cm2";
        };
    }
}
