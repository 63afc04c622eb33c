package org.bagwright.balance;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;

/**
 * Shaft, grip and head inertia of a club about which a book says nothing. All of it is common practice, without a source:
 * a graphite shaft in woods and hybrids, a steel one in irons, wedges and putters.
 */
public final class BalanceDefaults {
    private static final double M_PER_IN = 0.0254;
    private static final double SHAFT_BALANCE_SHARE = 0.48;

    private BalanceDefaults() {}

    /** Mass of the cut shaft, kilograms: 60 g in a driver of 45 in, 110 g in an iron of 37 in, others in proportion. */
    public static double shaftMassKg(ClubKind kind, double lengthM) {
        double lengthIn = lengthM / M_PER_IN;
        return switch (kind) {
            case DRIVER -> 0.060 * lengthIn / 45;
            case WOOD -> 0.065 * lengthIn / 43;
            case HYBRID -> 0.075 * lengthIn / 40;
            case IRON, WEDGE -> 0.110 * lengthIn / 37;
            case PUTTER -> 0.115 * lengthIn / 34;
        };
    }

    /** Balance point of the cut shaft from its butt end, metres: 48 % of the length, since the butt is the thicker end. */
    public static double shaftBalanceM(double lengthM) {
        return SHAFT_BALANCE_SHARE * lengthM;
    }

    /** Mass of the grip, kilograms. */
    public static double gripMassKg(ClubKind kind) {
        return kind == ClubKind.PUTTER ? 0.065 : 0.050;
    }

    /**
     * Inertia of the head with empty ports about the vertical axis through its centre of gravity, kg m2: about 4400 g cm2
     * for a driver of 200 g and 2400 g cm2 for an iron of 270 g, others in proportion to their mass.
     */
    public static double headInertiaKgM2(ClubKind kind, double headMassKg) {
        double gyrationM =
                switch (kind) {
                    case DRIVER -> 0.047;
                    case WOOD -> 0.035;
                    case HYBRID -> 0.032;
                    case IRON, WEDGE -> 0.030;
                    case PUTTER -> 0.036;
                };
        return headMassKg * gyrationM * gyrationM;
    }

    /** Inertia about the axis toward the target, as a share of that about the vertical axis. */
    static double rollRatio(ClubKind kind) {
        return switch (kind) {
            case DRIVER -> 0.60;
            case WOOD -> 0.70;
            case HYBRID -> 0.80;
            case IRON, WEDGE -> 1.10;
            case PUTTER -> 0.90;
        };
    }

    /** Inertia about the axis from toe to heel, as a share of that about the vertical axis. */
    static double pitchRatio(ClubKind kind) {
        return switch (kind) {
            case DRIVER -> 0.65;
            case WOOD -> 0.45;
            case HYBRID -> 0.40;
            case IRON -> 0.25;
            case WEDGE -> 0.30;
            case PUTTER -> 0.35;
        };
    }

    /** Which figures of this club its balance has to assume. */
    public static Set<BalanceFigure> assumedFor(Club club) {
        return BalanceParts.of(club).assumed();
    }

    /** The assumed figures of this club with their values, such as {@code grip mass 50 g}, in a fixed order. */
    public static List<String> inWords(Club club, LengthUnit unit) {
        BalanceParts parts = BalanceParts.of(club);
        return Arrays.stream(BalanceFigure.values())
                .filter(parts.assumed()::contains)
                .map(figure -> figure.label() + " " + value(figure, parts, unit))
                .toList();
    }

    private static String value(BalanceFigure figure, BalanceParts parts, LengthUnit unit) {
        return switch (figure) {
            case LENGTH -> length(parts.lengthM(), unit);
            case HEAD_MASS -> grams(parts.headMassKg());
            case HEAD_INERTIA -> Numbers.trimmed(parts.headInertiaKgM2() * 1e7, 0) + " g cm2";
            case SHAFT_MASS -> grams(parts.shaftMassKg());
            case SHAFT_BALANCE -> length(parts.shaftBalanceM(), unit) + " from the butt";
            case GRIP_MASS -> grams(parts.gripMassKg());
        };
    }

    private static String grams(double massKg) {
        return Numbers.trimmed(massKg * 1000, 0) + " g";
    }

    private static String length(double lengthM, LengthUnit unit) {
        return Numbers.trimmed(unit.fromM(lengthM), unit == LengthUnit.INCH ? 2 : 0) + " " + unit.label();
    }
}
