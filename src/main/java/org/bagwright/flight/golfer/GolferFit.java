package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.BallFlight;
import org.bagwright.flight.Bracket;
import org.bagwright.flight.Launch;
import org.bagwright.flight.PointHead;
import org.bagwright.flight.golfer.ClubFit.Part;

/**
 * Settles the delivery of every club of one golfer, one quantity after the other: from the club's own shots where they give
 * it, else lent by the clubs next to it in length as a change from the plain amateur's value.
 */
final class GolferFit {
    private static final Bracket EFFICIENCY_SHIFTS = new Bracket(0.3, 1.6);

    private final BallFlight flights;
    private final List<ClubFit> clubs;
    private double dragRatio = 1;

    GolferFit(BallFlight flights, List<ClubFit> clubs) {
        this.flights = flights;
        this.clubs = clubs;
    }

    /** Settles every club; returns the golfer's factor on drag. */
    double settle() {
        settle(Part.ATTACK, GolferFit::attackShiftDeg, GolferFit::withAttackShift);
        settle(Part.LOFT, GolferFit::offsetShiftDeg, GolferFit::withOffsetShift);
        settle(Part.SPIN, GolferFit::spinRatio, (club, ratio) -> club.delivery().withSpinRatio(ratio));
        settle(Part.BALL_SPEED, GolferFit::efficiencyShift, GolferFit::withEfficiencyShift);
        dragRatio = new DragFit(flights, measuredFlights()).ratio();
        settle(Part.CARRY, this::carryRatio, (club, ratio) -> club.delivery().withCarryRatio(ratio));
        settle(Part.BALL_SPEED, this::efficiencyShiftByAnyMeans, GolferFit::withEfficiencyShift);
        clubs.stream().filter(GolferFit::carryAlone).forEach(this::closeOnCarry);
        return dragRatio;
    }

    /** Carry today before the carry ratio, m. */
    private double modelCarryM(ClubFit club) {
        return flights.fly(club.todayLaunch(), dragRatio).carryM();
    }

    private void settle(Part part, Function<ClubFit, OptionalDouble> own, BiFunction<ClubFit, Double, Delivery> apply) {
        ClubInterpolation lending = new ClubInterpolation();
        List<ClubFit> without = new ArrayList<>();
        for (ClubFit club : clubs) {
            OptionalDouble value = own.apply(club);
            if (value.isEmpty()) {
                without.add(club);
            } else {
                club.own(part, apply.apply(club, value.getAsDouble()));
                lend(part, club, value.getAsDouble(), lending);
            }
        }
        without.forEach(club -> borrow(part, club, lending, apply));
    }

    private static void lend(Part part, ClubFit club, double value, ClubInterpolation lending) {
        if (shared(part, club)) {
            lending.add(club.today().placeM(), value, club.name());
        }
    }

    private static void borrow(
            Part part, ClubFit club, ClubInterpolation lending, BiFunction<ClubFit, Double, Delivery> apply) {
        if (shared(part, club) && !lending.isEmpty()) {
            double placeM = club.today().placeM();
            club.borrow(part, apply.apply(club, lending.at(placeM)), lending.lendersAt(placeM));
        }
    }

    /** The path to a ball on a tee tells nothing about the other clubs. */
    private static boolean shared(Part part, ClubFit club) {
        return part != Part.ATTACK || club.today().kind() != ClubKind.DRIVER;
    }

    private static OptionalDouble attackShiftDeg(ClubFit club) {
        return shift(club.shots().attackDeg(), club.plain().attackDeg());
    }

    private static Delivery withAttackShift(ClubFit club, double shiftDeg) {
        return club.delivery().withAttackDeg(club.plain().attackDeg() + shiftDeg);
    }

    private static OptionalDouble offsetShiftDeg(ClubFit club) {
        if (club.shots().launchDeg().isEmpty()) {
            return OptionalDouble.empty();
        }
        double attackDeg = club.delivery().attackDeg();
        PointHead head = club.today().head(club.delivery().headSpeedMps());
        OptionalDouble spinLoftDeg = head.spinLoftDeg(club.shots().launchDeg().getAsDouble() - attackDeg);
        return spinLoftDeg.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(spinLoftDeg.getAsDouble()
                        + attackDeg
                        - club.today().loftDeg()
                        - club.plain().offsetDeg());
    }

    private static Delivery withOffsetShift(ClubFit club, double shiftDeg) {
        return club.delivery().withOffsetDeg(club.plain().offsetDeg() + shiftDeg);
    }

    private static OptionalDouble spinRatio(ClubFit club) {
        return ratio(club.shots().spinRpm(), club.todayBlow().spinRpm());
    }

    private static OptionalDouble efficiencyShift(ClubFit club) {
        return ratio(
                club.shots().ballSpeedMps(),
                club.todayBlow().ballSpeedMps() * club.plain().efficiencyRatio());
    }

    private static Delivery withEfficiencyShift(ClubFit club, double shift) {
        return club.delivery().withEfficiencyRatio(club.plain().efficiencyRatio() * shift);
    }

    private OptionalDouble carryRatio(ClubFit club) {
        return club.shots().ballSpeedMps().isPresent()
                ? ratio(club.shots().carryM(), modelCarryM(club))
                : OptionalDouble.empty();
    }

    /** From the ball speed, or else from the carry, as far as a ball speed can explain it. */
    private OptionalDouble efficiencyShiftByAnyMeans(ClubFit club) {
        if (!carryAlone(club)) {
            return efficiencyShift(club);
        }
        double plainRatio = club.plain().efficiencyRatio();
        Delivery delivery = club.delivery();
        return EFFICIENCY_SHIFTS.root(efficiency -> {
            Delivery tried = delivery.withEfficiencyRatio(efficiency * plainRatio);
            Launch launch = tried.launch(club.today(), club.today().loftDeg());
            return flights.fly(launch, dragRatio).carryM() * delivery.carryRatio()
                    - club.shots().carryM().getAsDouble();
        });
    }

    private void closeOnCarry(ClubFit club) {
        ratio(club.shots().carryM(), modelCarryM(club))
                .ifPresent(ratio -> club.own(Part.CARRY, club.delivery().withCarryRatio(ratio)));
    }

    private static boolean carryAlone(ClubFit club) {
        return club.shots().ballSpeedMps().isEmpty() && club.shots().carryM().isPresent();
    }

    private List<DragFit.Measured> measuredFlights() {
        return clubs.stream()
                .filter(club ->
                        club.shots().fullLaunch() && club.shots().carryM().isPresent())
                .map(club -> new DragFit.Measured(
                        club.todayLaunch(), club.shots().carryM().getAsDouble()))
                .toList();
    }

    private static OptionalDouble shift(OptionalDouble measured, double plain) {
        return measured.isPresent() ? OptionalDouble.of(measured.getAsDouble() - plain) : measured;
    }

    private static OptionalDouble ratio(OptionalDouble measured, double modelled) {
        return measured.isPresent() && modelled > 0 && measured.getAsDouble() > 0
                ? OptionalDouble.of(measured.getAsDouble() / modelled)
                : OptionalDouble.empty();
    }
}
