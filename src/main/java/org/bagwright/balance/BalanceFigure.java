package org.bagwright.balance;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;

/** The figures from which a club's balance is worked out, each of which a book may leave blank. */
public enum BalanceFigure {
    LENGTH("length", Kind.LENGTH, BalanceParts::lengthM),
    HEAD_MASS("head mass", Kind.MASS, BalanceParts::headMassKg),
    HEAD_INERTIA("head inertia", Kind.INERTIA, BalanceParts::headInertiaKgM2),
    SHAFT_MASS("shaft mass", Kind.MASS, BalanceParts::shaftMassKg),
    SHAFT_BALANCE("shaft balance", Kind.LENGTH, BalanceParts::shaftBalanceM),
    GRIP_MASS("grip mass", Kind.MASS, BalanceParts::gripMassKg);

    private static final double G_PER_KG = 1000;
    private static final double G_CM2_PER_KG_M2 = 1e7;

    private final String label;
    private final Kind kind;
    private final ToDoubleFunction<BalanceParts> value;

    BalanceFigure(String label, Kind kind, ToDoubleFunction<BalanceParts> value) {
        this.label = label;
        this.kind = kind;
        this.value = value;
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

    /** Its values over some clubs, at least one, such as {@code 50 g} or {@code 60 to 126 g}. */
    public String range(List<BalanceParts> clubs, LengthUnit unit) {
        List<String> ends = clubs.stream()
                .mapToDouble(value)
                .sorted()
                .mapToObj(number -> text(number, unit))
                .distinct()
                .toList();
        String last = ends.get(ends.size() - 1);
        return (ends.size() == 1 ? last : ends.get(0) + " to " + last) + " " + unitText(unit);
    }

    private String text(double number, LengthUnit unit) {
        return switch (kind) {
            case LENGTH -> Numbers.trimmed(unit.fromM(number), unit == LengthUnit.INCH ? 2 : 0);
            case MASS -> Numbers.trimmed(number * G_PER_KG, 0);
            case INERTIA -> Numbers.trimmed(number * G_CM2_PER_KG_M2, 0);
        };
    }

    private String unitText(LengthUnit unit) {
        return switch (kind) {
            case LENGTH -> unit.label() + (this == SHAFT_BALANCE ? " from the butt" : "");
            case MASS -> "g";
            case INERTIA -> "g cm2";
        };
    }
}
