package org.bagwright.balance;

import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.ClubParts;

/**
 * The parts of one club, as stated or else assumed. What is assumed is common practice, without a source: a graphite shaft in
 * woods and hybrids, a steel one in irons, wedges and putters; length and head mass as usual for the {@link ClubKind}.
 *
 * @param lengthM club length, metres
 * @param headMassKg head with empty ports, kilograms
 * @param headInertiaKgM2 inertia of that head about the vertical axis through its centre of gravity, kg m2
 * @param shaftMassKg cut shaft, kilograms
 * @param shaftBalanceM balance point of the cut shaft from its butt end, metres
 * @param gripMassKg grip, kilograms
 * @param assumed which of them the book does not state
 */
public record BalanceParts(
        double lengthM,
        double headMassKg,
        double headInertiaKgM2,
        double shaftMassKg,
        double shaftBalanceM,
        double gripMassKg,
        Set<BalanceFigure> assumed) {

    private static final double M_PER_IN = 0.0254;

    /** A shaft balances nearer to its butt end, which is the thicker one. */
    private static final double SHAFT_BALANCE_SHARE = 0.48;

    public BalanceParts {
        assumed = Set.copyOf(assumed);
    }

    /** The parts of this club. */
    public static BalanceParts of(Club club) {
        ClubKind kind = club.kind();
        ClubParts own = club.parts();
        Stated stated = new Stated();
        double usualM = kind.usualLengthM(club.head().loftDeg());
        double lengthM = stated.or(BalanceFigure.LENGTH, own.lengthM(), usualM);
        double headMassKg = stated.or(BalanceFigure.HEAD_MASS, club.form().massKg(), kind.usualHeadMassKg(lengthM));
        return new BalanceParts(
                lengthM,
                headMassKg,
                stated.or(BalanceFigure.HEAD_INERTIA, club.form().inertiaKgM2(), usualInertiaKgM2(kind, headMassKg)),
                stated.or(BalanceFigure.SHAFT_MASS, own.shaftMassKg(), usualShaftMassKg(kind, lengthM)),
                stated.or(BalanceFigure.SHAFT_BALANCE, own.shaftBalanceM(), SHAFT_BALANCE_SHARE * lengthM),
                stated.or(BalanceFigure.GRIP_MASS, own.gripMassKg(), kind == ClubKind.PUTTER ? 0.065 : 0.050),
                stated.assumed);
    }

    /** One of its figures, in SI units. */
    public double value(BalanceFigure figure) {
        return switch (figure) {
            case LENGTH -> lengthM;
            case HEAD_MASS -> headMassKg;
            case HEAD_INERTIA -> headInertiaKgM2;
            case SHAFT_MASS -> shaftMassKg;
            case SHAFT_BALANCE -> shaftBalanceM;
            case GRIP_MASS -> gripMassKg;
        };
    }

    /** 60 g in a driver of 45 in, 110 g in an iron of 37 in, others in proportion. */
    private static double usualShaftMassKg(ClubKind kind, double lengthM) {
        double lengthIn = lengthM / M_PER_IN;
        return switch (kind) {
            case DRIVER -> 0.060 * lengthIn / 45;
            case WOOD -> 0.065 * lengthIn / 43;
            case HYBRID -> 0.075 * lengthIn / 40;
            case IRON, WEDGE -> 0.110 * lengthIn / 37;
            case PUTTER -> 0.115 * lengthIn / 34;
        };
    }

    /** About 4400 g cm2 for a driver of 200 g and 2400 g cm2 for an iron of 270 g, others in proportion to their mass. */
    private static double usualInertiaKgM2(ClubKind kind, double headMassKg) {
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

    private static final class Stated {
        private final Set<BalanceFigure> assumed = EnumSet.noneOf(BalanceFigure.class);

        double or(BalanceFigure figure, OptionalDouble stated, double usual) {
            if (stated.isEmpty()) {
                assumed.add(figure);
            }
            return stated.orElse(usual);
        }
    }
}
