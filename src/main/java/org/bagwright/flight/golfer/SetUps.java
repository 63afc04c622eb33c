package org.bagwright.flight.golfer;

import java.util.Optional;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;

/** What the set-ups of a golfer's clubs present to the ball in his hands. */
@FunctionalInterface
public interface SetUps {
    /** The loft that a club presents at address in a set-up, degrees. */
    double presentedLoftDeg(Club club, Choice choice);

    /** What the weighting of a set-up makes of the head; empty for today's weighting. */
    default Optional<WeightedHead> weighted(Club club, Choice choice) {
        return Optional.empty();
    }

    /** Whether the stated loft of a club was gauged. */
    default boolean gauged(Club club) {
        return false;
    }
}
