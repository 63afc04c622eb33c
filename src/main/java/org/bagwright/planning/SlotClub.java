package org.bagwright.planning;

import java.util.Optional;
import org.bagwright.balance.ClubBalance;
import org.bagwright.domain.BuildNumbers;
import org.bagwright.domain.Choice;
import org.bagwright.domain.Club;
import org.bagwright.domain.Kit;
import org.bagwright.domain.ShotPrediction;
import org.bagwright.domain.Sleeve;
import org.bagwright.domain.Weighting;
import org.bagwright.flight.GolferFlight;
import org.bagwright.geometry.ClubGeometry;

/**
 * A club that may fill a slot, with everything by which its options are computed.
 *
 * @param club the club
 * @param sleeve its sleeve; empty for a glued shaft
 * @param kit its kit of weights; empty for a head without ports
 * @param geometry its geometry in the golfer's hands
 * @param balance its balance
 */
record SlotClub(Club club, Optional<Sleeve> sleeve, Optional<Kit> kit, ClubGeometry geometry, ClubBalance balance) {

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
        return flight.predict(club, loftDeg, faceDeg);
    }
}
