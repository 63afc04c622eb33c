package org.bagwright.flight.golfer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.flight.learning.ClubToday;

/**
 * Stated lofts against those that launch and spin of a club's own shots tell, after what is usual of the golfer: that of his
 * other clubs. A club whose launch and spin disagree was struck in another way, and its loft is not doubted.
 */
final class StatedLofts {
    private static final double MOST_OFF_DEG = 2.5;
    private static final double MOST_OFF_OF_THREE_DEG = 3;
    private static final double LEAST_EACH_DEG = 1.8;
    private static final double MORE_BY_LAUNCH_ALONE_DEG = 1.5;
    private static final int FEWEST = 3;

    /** Delivered loft of a driver over the plain golfer's where the other clubs agree with his, degrees; from memory. */
    private static final double USUAL_DRIVER_DEG = -0.8;

    /** Spin of any wedge over that of the impact formulas: one value, so that it does not follow a mistyped loft; assumed. */
    private static final double USUAL_WEDGE_SPIN_RATIO = 1.44;

    /** What a club's own shots tell of its loft, as a change from the stated one, degrees. */
    private record Told(ClubFit club, double byLaunchDeg, OptionalDouble bySpinDeg) {
        boolean isOff(double mostDeg) {
            if (bySpinDeg.isEmpty()) {
                return Math.abs(byLaunchDeg) > mostDeg + MORE_BY_LAUNCH_ALONE_DEG;
            }
            double spinDeg = bySpinDeg.getAsDouble();
            return byLaunchDeg * spinDeg > 0
                    && Math.min(Math.abs(byLaunchDeg), Math.abs(spinDeg)) > LEAST_EACH_DEG
                    && Math.abs(meanDeg()) > mostDeg;
        }

        double meanDeg() {
            return bySpinDeg.isEmpty() ? byLaunchDeg : (byLaunchDeg + bySpinDeg.getAsDouble()) / 2;
        }
    }

    private final PlainGolfer plain;
    private final String golfer;
    private final List<ClubFit> clubs;

    StatedLofts(FitInput input) {
        this.plain = input.plain();
        this.golfer = input.golfer().name();
        this.clubs = new ArrayList<>(input.clubs().stream()
                .filter(club -> club.shots().launchDeg().isPresent())
                .toList());
    }

    /** A message for each club whose loft its shots deny; the one farthest off first, the others without it. */
    List<Message> messages() {
        List<Message> messages = new ArrayList<>();
        Optional<Told> worst = worst();
        while (worst.isPresent()) {
            messages.add(message(worst.get()));
            clubs.remove(worst.get().club());
            worst = worst();
        }
        return messages;
    }

    /** Of three clubs, two are few to say what is usual of a golfer. */
    private Optional<Told> worst() {
        double mostDeg = clubs.size() == FEWEST ? MOST_OFF_OF_THREE_DEG : MOST_OFF_DEG;
        return clubs.size() < FEWEST
                ? Optional.empty()
                : clubs.stream()
                        .map(this::told)
                        .filter(told -> told.isOff(mostDeg))
                        .max(Comparator.comparingDouble(told -> Math.abs(told.meanDeg())));
    }

    private Told told(ClubFit club) {
        double slope = deliveredPerStated(club);
        double launchDeg = offDeg(club, StatedLofts::offsetDeg) / slope;
        if (club.shots().spinRpm().isEmpty()) {
            return new Told(club, launchDeg, OptionalDouble.empty());
        }
        double spinLoftDeg = club.delivery().deliveredLoftDeg(club.hit().loftDeg())
                - club.delivery().attackDeg();
        double moreSpin = offDeg(club, other -> Math.log(spinRatio(other)));
        double spinDeg = launchDeg + Math.toDegrees(moreSpin * Math.tan(Math.toRadians(spinLoftDeg))) / slope;
        return new Told(club, launchDeg, OptionalDouble.of(spinDeg));
    }

    /** A club's value less what his other clubs lead one to expect: the nearer of their median and of the clubs next to it. */
    private double offDeg(ClubFit club, ToDoubleFunction<ClubFit> value) {
        List<ClubFit> others = clubs.stream().filter(other -> other != club).toList();
        double median =
                ShotMedians.median(others.stream().mapToDouble(value).toArray()).orElseThrow();
        ClubInterpolation nextToIt = new ClubInterpolation();
        others.forEach(other -> nextToIt.add(other.today().placeM(), value.applyAsDouble(other)));
        double own = value.applyAsDouble(club);
        double fromMedian = own - median;
        double fromNext = own - nextToIt.at(club.today().placeM());
        return fromMedian * fromNext <= 0 ? 0 : Math.abs(fromMedian) < Math.abs(fromNext) ? fromMedian : fromNext;
    }

    /** Delivered loft above the one that is usual with a club, degrees. */
    private static double offsetDeg(ClubFit club) {
        double usualDeg = club.today().kind() == ClubKind.DRIVER ? USUAL_DRIVER_DEG : 0;
        return club.delivery().offsetDeg() - club.plain().offsetDeg() - usualDeg;
    }

    private static double spinRatio(ClubFit club) {
        boolean wedge = club.today().kind() == ClubKind.WEDGE;
        return club.delivery().spinRatio()
                / (wedge ? USUAL_WEDGE_SPIN_RATIO : club.plain().spinRatio());
    }

    /** Degrees of delivered loft for a degree of stated loft: a plain amateur delivers the stronger club with more of it. */
    private double deliveredPerStated(ClubFit club) {
        ClubToday weaker = club.hit().presenting(club.hit().loftDeg() + 1);
        return 1 + plain.delivery(weaker).offsetDeg() - club.plain().offsetDeg();
    }

    private Message message(Told told) {
        double statedDeg = told.club().today().club().head().loftDeg();
        double toldDeg = Math.rint(2 * (statedDeg + told.meanDeg())) / 2;
        return Message.warning(
                        told.club().today().club().cell(),
                        Wording.ofClub(
                                "Loft that launch and spin of its own shots do not fit, as the golfer hits his other clubs: ",
                                golfer,
                                told.club().name(),
                                FitterUnits.angle(statedDeg) + ", about " + FitterUnits.angle(toldDeg)
                                        + " by its shots",
                                ". Maybe Loft is mistyped, or the shots were hit at another setting."))
                .in("Loft");
    }
}
