package org.bagwright.planning;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.bagwright.domain.Aim;
import org.bagwright.domain.Aims;
import org.bagwright.domain.Bend;
import org.bagwright.domain.BendRange;
import org.bagwright.domain.Choice;
import org.bagwright.domain.Club;
import org.bagwright.domain.ClubOptions;
import org.bagwright.domain.Golfer;
import org.bagwright.domain.Measure;
import org.bagwright.domain.Option;
import org.bagwright.domain.OwnTerms;
import org.bagwright.domain.PoseNumbers;
import org.bagwright.domain.ShotPrediction;
import org.bagwright.domain.Sleeve;
import org.bagwright.domain.SleeveSetting;
import org.bagwright.flight.GolferFlight;
import org.bagwright.geometry.ClubGeometry;

/** Computes every option of a club once, before anything is searched. */
final class OptionMaker {
    private static final double SAME_TURN_DEG = 1e-6;
    /** A head that topples this far has no line to tell. */
    private static final double MOST_FACE_DEG = 45;

    private final Golfer golfer;
    private final Aims aims;
    private final GolferFlight flight;

    OptionMaker(Golfer golfer, Aims aims, GolferFlight flight) {
        this.golfer = golfer;
        this.aims = aims;
        this.flight = flight;
    }

    /** The choice that a club has today. */
    static Choice today(Club club) {
        return new Choice(club.setting(), club.todayBend());
    }

    /** The loft that a club presents to the ball: squared by the golfer, or as the head sits. */
    static double presentedLoftDeg(Golfer golfer, PoseNumbers pose) {
        return golfer.squaresFace() ? pose.addressLoftDeg() : pose.loftAsItSitsDeg();
    }

    /** The heading of the face at the ball, closed positive: squared by the golfer, or as the head sits. */
    static double presentedFaceDeg(Golfer golfer, PoseNumbers pose) {
        return golfer.squaresFace() ? pose.faceHeadingDeg() : pose.sitsClosedDeg();
    }

    ClubOptions options(Club club, Optional<Sleeve> sleeve, ClubGeometry geometry) {
        List<Option> options = new ArrayList<>();
        Map<Presented, ShotPrediction> flown = new HashMap<>();
        for (Choice choice : choices(club, sleeve)) {
            options.add(option(club, choice, geometry.pose(choice), flown));
        }
        List<Integer> open = new ArrayList<>();
        int today = 0;
        for (int index = 0; index < options.size(); index++) {
            if (options.get(index).open()) {
                open.add(index);
            }
            today = options.get(index).changes() == 0 ? index : today;
        }
        return new ClubOptions(club, options, today, open.isEmpty() ? List.of(today) : open);
    }

    /** Every combination of setting, loft bend and lie bend that the row allows, and today's. */
    static Set<Choice> choices(Club club, Optional<Sleeve> sleeve) {
        List<Optional<String>> settings = sleeve.map(known -> known.settings().stream()
                        .map(SleeveSetting::mark)
                        .map(Optional::of)
                        .toList())
                .orElse(List.of(Optional.empty()));
        Set<Choice> choices = new LinkedHashSet<>();
        for (Optional<String> setting : settings) {
            for (double loftDeg : bendsDeg(club.bendRange(), club.todayBend().loftDeg())) {
                for (double lieDeg : bendsDeg(club.bendRange(), club.todayBend().lieDeg())) {
                    choices.add(new Choice(setting, new Bend(loftDeg, lieDeg)));
                }
            }
        }
        return choices;
    }

    private static Set<Double> bendsDeg(BendRange range, double todayDeg) {
        Set<Double> bends = new TreeSet<>();
        bends.add(tidy(todayDeg));
        int steps = (int) Math.floor(range.limitDeg() / range.stepDeg() + 1e-9);
        for (int step = -steps; step <= steps && range.limitDeg() > 0; step++) {
            bends.add(tidy(step * range.stepDeg()));
        }
        return bends;
    }

    /** Four decimals and no negative zero, so that a bend typed by hand equals the computed one. */
    private static double tidy(double valueDeg) {
        return BigDecimal.valueOf(valueDeg).setScale(4, RoundingMode.HALF_UP).doubleValue() + 0.0;
    }

    private Option option(Club club, Choice choice, PoseNumbers pose, Map<Presented, ShotPrediction> flown) {
        Optional<ShotPrediction> shot = club.kind().carries()
                ? Optional.of(flown.computeIfAbsent(
                        new Presented(presentedLoftDeg(golfer, pose), presentedFaceDeg(golfer, pose)),
                        presented -> shot(club, presented)))
                : Optional.empty();
        Choice today = today(club);
        int changes = choice.itemsThatDiffer(new Choice(today.setting(), tidied(today.bend())));
        return new Option(
                Option.keyOf(club, choice),
                choice,
                pose,
                presentedFaceDeg(golfer, pose),
                shot,
                changes,
                terms(club, pose, shot, changes),
                isOpen(club, choice, pose, changes));
    }

    /** What a club presents to the ball, degrees, the face closed positive. */
    private record Presented(double loftDeg, double faceDeg) {}

    /**
     * The line of a face that does not point at the target; the carry stays that of the square blow, since the shots that it
     * was set by were measured along their own line too.
     */
    private ShotPrediction shot(Club club, Presented presented) {
        ShotPrediction square = flight.predict(club, presented.loftDeg());
        if (Math.abs(presented.faceDeg()) > MOST_FACE_DEG) {
            return square;
        }
        ShotPrediction aimed = flight.predict(club, presented.loftDeg(), presented.faceDeg());
        return square.onLine(aimed.startClosedDeg(), aimed.sidewaysClosedM());
    }

    private static Bend tidied(Bend bend) {
        return new Bend(tidy(bend.loftDeg()), tidy(bend.lieDeg()));
    }

    private boolean isOpen(Club club, Choice choice, PoseNumbers pose, int changes) {
        if (club.pinned()) {
            return changes == 0;
        }
        boolean allowed = club.allowed().isEmpty()
                || choice.setting()
                        .map(mark -> club.allowed().stream().anyMatch(mark::equalsIgnoreCase))
                        .orElse(true);
        boolean aligned = !golfer.keepsShaftAligned() || Math.abs(pose.shaftTurnDeg()) < SAME_TURN_DEG;
        return allowed && aligned;
    }

    private OwnTerms terms(Club club, PoseNumbers pose, Optional<ShotPrediction> shot, int changes) {
        Deviations off = new Deviations(aims);
        double loft =
                off.points(Measure.LOFT, pose.gaugeLoftDeg(), club.targets().loftDeg());
        double lie = off.points(Measure.LIE, pose.gaugeLieDeg(), OptionalDouble.of(club.lieTargetDeg()));
        double outsideDeg = golfer.sitsRange().outsideDeg(pose.sitsClosedDeg());
        double sits = off.points(Measure.SITS, outsideDeg, OptionalDouble.of(0));
        double carry = shot.isPresent()
                ? off.points(Measure.CARRY, shot.get().carryM(), club.targets().carryM())
                : 0;
        double change = changes * aims.of(Measure.CHANGE).penaltyPoints(1);
        return new OwnTerms(loft, lie, sits, carry, change, off.hardBreaks);
    }

    /** Adds up the broken musts while it prices deviations. */
    private static final class Deviations {
        private final Aims aims;
        private long hardBreaks;

        Deviations(Aims aims) {
            this.aims = aims;
        }

        double points(Measure measure, double value, OptionalDouble target) {
            if (target.isEmpty()) {
                return 0;
            }
            Aim aim = aims.of(measure);
            double deviation = value - target.getAsDouble();
            hardBreaks += aim.hardBreakThousandths(deviation);
            return aim.penaltyPoints(deviation);
        }
    }
}
