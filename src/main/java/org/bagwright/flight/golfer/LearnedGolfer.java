package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.CarryOrigin;
import org.bagwright.flight.GolferBall;
import org.bagwright.flight.learning.Argument;
import org.bagwright.flight.learning.ClubModel;
import org.bagwright.flight.learning.ClubToday;
import org.bagwright.flight.learning.Delivery;
import org.bagwright.flight.learning.DoubtFactors;
import org.bagwright.flight.learning.Learning;
import org.bagwright.flight.learning.ModelledClub;
import org.bagwright.flight.learning.Presented;
import org.bagwright.flight.learning.Quantity;
import org.bagwright.flight.learning.ShotGroup;

/** One golfer as his shots show him, ready to be asked for any club in any set-up. */
final class LearnedGolfer {
    private static final double SAME_LOFT_DEG = 0.01;

    /** Lofts about the reference of each club from which the directions of doubt are found, degrees. */
    private static final double[] ABOUT_DEG = {-2, 0, 2};

    private final BagModel bag;
    private final Learning learning;
    private final List<double[]> arguments;
    private final GolferBall ball;
    private final DoubtFactors factors;

    /**
     * Learns a golfer.
     *
     * @param air flights in the air of the book
     * @param bag his clubs and shots
     */
    LearnedGolfer(GolferBall air, BagModel bag) {
        this.bag = bag;
        this.learning = new Learning(air, bag.clubs(), bag.unknowns(), bag.groups());
        double[] mean = learning.posterior().mean();
        this.arguments = bag.clubs().stream().map(club -> club.arguments(mean)).toList();
        this.ball = arguments.isEmpty() ? air.with(bag.ballShare(), 1, 1) : ball(air, arguments.get(0));
        this.factors = new DoubtFactors(learning.posterior(), bag.unknowns(), bag.headCount(), slopesAllOver());
    }

    private static GolferBall ball(GolferBall air, double[] any) {
        return air.with(
                any[Argument.BALL.ordinal()],
                Math.exp(any[Argument.LN_DRAG.ordinal()]),
                Math.exp(any[Argument.LN_LIFT.ordinal()]));
    }

    /** How carries all over the bag depend on the unknowns, m. */
    private List<double[]> slopesAllOver() {
        List<double[]> slopes = new ArrayList<>();
        for (int number : bag.places().values()) {
            for (double aboutDeg : ABOUT_DEG) {
                slopes.add(slopesM(number, Presented.of(bag.clubs().get(number).referenceLoftDeg() + aboutDeg)));
            }
        }
        return slopes;
    }

    private double[] slopesM(int number, Presented presented) {
        double[] byArguments = learning.models().get(number).carrySlopesM(arguments.get(number), presented);
        return bag.clubs().get(number).byUnknowns(byArguments);
    }

    private ModelledClub modelled(Club club) {
        return bag.clubs().get(bag.places().get(club));
    }

    /** Whether it knows a club. */
    boolean knows(Club club) {
        return bag.places().containsKey(club);
    }

    /** How he delivers a club. */
    Delivery delivery(Club club) {
        return ClubModel.delivery(arguments.get(bag.places().get(club)));
    }

    /** The club with its stated loft. */
    ClubToday stated(Club club) {
        return modelled(club).club();
    }

    /** His ball. */
    GolferBall ball() {
        return ball;
    }

    /** The presented loft about which his response to a change turns, degrees. */
    double referenceLoftDeg(Club club) {
        return modelled(club).referenceLoftDeg();
    }

    /** By how much a change of set-up changes his carry: 1 for just as the model says. */
    double responseRatio() {
        return arguments.isEmpty() ? 1 : 1 + arguments.get(0)[Argument.RESPONSE.ordinal()];
    }

    /** How far the carry of a set-up may be off. */
    CarryDoubt doubt(Club club, double loftDeg, Optional<WeightedHead> weighted) {
        Presented presented = weighted.map(
                        head -> new WeightedBlow(delivery(club), stated(club), loftDeg, 0, head).presented())
                .orElseGet(() -> Presented.of(loftDeg));
        return factors.of(modelled(club).head(), slopesM(bag.places().get(club), presented));
    }

    /** Where the carry of a club in a set-up comes from. */
    CarryOrigin origin(Club club, double loftDeg) {
        if (bag.groups().isEmpty()) {
            return CarryOrigin.ASSUMED;
        }
        List<ShotGroup> own = bag.groups().stream()
                .filter(group ->
                        bag.clubs().get(group.club()).head() == modelled(club).head())
                .toList();
        if (own.isEmpty()) {
            return CarryOrigin.LENT;
        }
        return own.stream().anyMatch(group -> isAt(group, loftDeg)) ? CarryOrigin.OWN_HERE : CarryOrigin.OWN_ELSEWHERE;
    }

    private static boolean isAt(ShotGroup group, double loftDeg) {
        return Math.abs(group.presented().loftDeg() - loftDeg) < SAME_LOFT_DEG;
    }

    /** How far single shots scatter in carry, as a share of it. */
    double carryScatterRatio() {
        return Math.sqrt(learning.scatter().variance(Quantity.CARRY));
    }

    /** The shots with what each counts. */
    List<ShotGroup> groups() {
        return learning.groups();
    }
}
