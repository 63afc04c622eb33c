package org.bagwright.flight.learning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.flight.GolferBall;
import org.bagwright.flight.golfer.PlainGolfer;
import org.bagwright.flight.golfer.TestBags;

/** The model of a golfer of 95 mph with some clubs, each as stated, and what he learns from shots at their stated lofts. */
final class ModelSketch {
    static final GolferBall AIR = GolferBall.in(AirConditions.DEFAULT);

    final Unknowns unknowns;
    final List<ModelledClub> clubs = new ArrayList<>();

    ModelSketch(Club... bag) {
        unknowns = new Unknowns(List.of(Optional.empty()), bag.length, Map.of());
        List<ClubToday> stated = ClubToday.bag(List.of(bag), club -> club.head().loftDeg());
        PlainGolfer plain = PlainGolfer.of(TestBags.golfer(95).speeds(), stated);
        for (ClubToday club : stated) {
            int head = clubs.size();
            double[] usual = usual(plain.delivery(club));
            clubs.add(new ModelledClub(club, head, usual, unknowns.design(club, head, 0, false), club.loftDeg()));
        }
    }

    private static double[] usual(Delivery delivery) {
        double[] arguments = new double[Argument.COUNT];
        arguments[Argument.LN_HEAD_SPEED.ordinal()] = Math.log(delivery.headSpeedMps());
        arguments[Argument.LN_EFFICIENCY.ordinal()] = Math.log(delivery.efficiencyRatio());
        arguments[Argument.OFFSET_DEG.ordinal()] = delivery.offsetDeg();
        arguments[Argument.ATTACK_DEG.ordinal()] = delivery.attackDeg();
        arguments[Argument.LN_SPIN.ordinal()] = Math.log(delivery.spinRatio());
        return arguments;
    }

    ShotGroup group(int club, Shot... shots) {
        Presented presented = Presented.of(clubs.get(club).club().loftDeg());
        return ShotGroup.of(club, presented, unknowns.day(Optional.empty()), List.of(shots));
    }

    Learning learn(ShotGroup... groups) {
        return new Learning(AIR, clubs, unknowns, List.of(groups));
    }

    /** How one argument of a club depends on the unknowns. */
    double[] slopes(int club, Argument argument) {
        double[] one = new double[Argument.COUNT];
        one[argument.ordinal()] = 1;
        return clubs.get(club).byUnknowns(one);
    }

    /** How the carry of a club at a loft depends on the unknowns where a golfer is found, m. */
    double[] carrySlopesM(Learning learning, int club, double loftDeg) {
        ModelledClub modelled = clubs.get(club);
        double[] arguments = modelled.arguments(learning.posterior().mean());
        return modelled.byUnknowns(learning.models().get(club).carrySlopesM(arguments, Presented.of(loftDeg)));
    }

    static double square(double[] values) {
        return Arrays.stream(values).map(value -> value * value).sum();
    }
}
