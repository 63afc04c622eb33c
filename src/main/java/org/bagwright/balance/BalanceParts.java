package org.bagwright.balance;

import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubDefaults;

/**
 * The parts of one club, as stated or else as assumed by {@link BalanceDefaults} and {@link ClubDefaults}.
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

    public BalanceParts {
        assumed = Set.copyOf(assumed);
    }

    /** The parts of this club. */
    public static BalanceParts of(Club club) {
        Stated stated = new Stated();
        double lengthM = stated.or(
                BalanceFigure.LENGTH,
                club.parts().lengthM(),
                ClubDefaults.lengthM(club.kind(), club.head().loftDeg()));
        double headMassKg =
                stated.or(BalanceFigure.HEAD_MASS, club.form().massKg(), ClubDefaults.headMassKg(club.kind(), lengthM));
        return new BalanceParts(
                lengthM,
                headMassKg,
                stated.or(
                        BalanceFigure.HEAD_INERTIA,
                        club.form().inertiaKgM2(),
                        BalanceDefaults.headInertiaKgM2(club.kind(), headMassKg)),
                stated.or(
                        BalanceFigure.SHAFT_MASS,
                        club.parts().shaftMassKg(),
                        BalanceDefaults.shaftMassKg(club.kind(), lengthM)),
                stated.or(
                        BalanceFigure.SHAFT_BALANCE,
                        club.parts().shaftBalanceM(),
                        BalanceDefaults.shaftBalanceM(lengthM)),
                stated.or(BalanceFigure.GRIP_MASS, club.parts().gripMassKg(), BalanceDefaults.gripMassKg(club.kind())),
                stated.assumed);
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
