package org.bagwright.planning.options;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.bagwright.balance.ClubBalance;
import org.bagwright.balance.HeadInertia;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.ClubWishes;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.flight.golfer.GolferFlight;
import org.bagwright.flight.golfer.WeightedHead;
import org.bagwright.geometry.ClubGeometry;

/**
 * A club that may fill a slot, with everything by which its options are computed.
 *
 * @param club the club
 * @param wishes what is wanted of it
 * @param sleeve its sleeve; empty for a glued shaft
 * @param kit its kit of weights; empty for a head without ports
 * @param geometry its geometry in the golfer's hands
 * @param balance its balance
 */
record SlotClub(
        Club club,
        ClubWishes wishes,
        Optional<Sleeve> sleeve,
        Optional<Kit> kit,
        ClubGeometry geometry,
        ClubBalance balance) {

    /** The weighting of a choice. */
    Optional<Weighting> weighting(Choice choice) {
        return choice.weighting().flatMap(this::weighting);
    }

    private Optional<Weighting> weighting(String name) {
        return kit.flatMap(known -> known.weighting(name));
    }

    BuildNumbers build(Optional<Weighting> weighting) {
        return balance.build(weighting);
    }

    /** The shot to expect with this loft, face and weighting. */
    ShotPrediction shot(GolferFlight flight, double loftDeg, double faceDeg, Optional<String> weighting) {
        return weightedAsOtherThanToday(weighting)
                .map(head -> flight.predict(club, loftDeg, faceDeg, head))
                .orElseGet(() -> flight.predict(club, loftDeg, faceDeg));
    }

    /** The head in a weighting, seen from today's; empty for today's. */
    Optional<WeightedHead> weightedAsOtherThanToday(Optional<String> weighting) {
        return weighting.equals(club.today().weighting()) ? Optional.empty() : Optional.of(weighted(weighting));
    }

    /** The head in a weighting, seen from today's. */
    private WeightedHead weighted(Optional<String> weighting) {
        HeadInertia today = balance.head(club.today().weighting().flatMap(this::weighting));
        HeadInertia then = balance.head(weighting.flatMap(this::weighting));
        Vector3D shift = then.shiftM().subtract(today.shiftM());
        double depthM = club.form().centreOfGravityDepthMm().stream()
                .map(mm -> mm / 1000)
                .findFirst()
                .orElseGet(() -> WeightedHead.assumedDepthM(club.kind()));
        return new WeightedHead(
                today.massKg(),
                then.massKg(),
                new WeightedHead.Shift(shift.getX(), shift.getY(), shift.getZ()),
                WeightedHead.Inertia.ofRows(then.aboutCentreKgM2().getData()),
                depthM);
    }

    /** Every combination of setting, weighting, loft bend and lie bend that the row allows, and today's. */
    Set<Choice> choices() {
        List<Optional<String>> settings = orNone(sleeve.map(Sleeve::settings), SleeveSetting::mark);
        List<Optional<String>> weightings = orNone(kit.map(Kit::weightings), Weighting::name);
        Set<Choice> choices = new LinkedHashSet<>();
        for (Optional<String> setting : settings) {
            for (Optional<String> weighting : weightings) {
                for (double loftDeg :
                        club.freedom().bendRange().bendsDeg(club.today().bend().loftDeg())) {
                    for (double lieDeg : club.freedom()
                            .bendRange()
                            .bendsDeg(club.today().bend().lieDeg())) {
                        choices.add(new Choice(setting, weighting, new Bend(loftDeg, lieDeg)));
                    }
                }
            }
        }
        return choices;
    }

    /** The names of what there is, or a single none. */
    private static <T> List<Optional<String>> orNone(Optional<List<T>> known, Function<T, String> name) {
        return known.map(list -> list.stream().map(name).map(Optional::of).toList())
                .orElse(List.of(Optional.empty()));
    }
}
