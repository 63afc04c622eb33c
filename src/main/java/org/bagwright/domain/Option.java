package org.bagwright.domain;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One way to set one club, with all its numbers.
 *
 * @param key text that names it uniquely in the book
 * @param choice what is set
 * @param pose what the geometry says
 * @param deliveredFaceDeg heading of the face that the golfer brings to the ball, closed positive, degrees: with the
 *     leading edge squared the face heading at address, else the heading of the edge as the head sits
 * @param shot the shot it gives; empty for a putter
 * @param changes how many items differ from today
 * @param terms its own part of the penalty
 * @param open whether a plan may take it: not closed by a pin, the allowed settings or the golfer's shaft rule
 */
public record Option(
        String key,
        Choice choice,
        PoseNumbers pose,
        double deliveredFaceDeg,
        Optional<ShotPrediction> shot,
        int changes,
        OwnTerms terms,
        boolean open) {
    public Option {
        Checks.named(key, "option");
        Checks.that(changes >= 0, "changes must be 0 or more");
    }

    /** The text that names an option: golfer, slot, club, setting, loft bend and lie bend between bars. */
    public static String keyOf(Club club, Choice choice) {
        return String.join(
                "|",
                club.golfer(),
                String.valueOf(club.slot()),
                club.name(),
                choice.settingText(),
                Numbers.trimmed(choice.bend().loftDeg()),
                Numbers.trimmed(choice.bend().lieDeg()));
    }

    /** The carry in metres; empty for a putter. */
    public OptionalDouble carryM() {
        return shot.map(value -> OptionalDouble.of(value.carryM())).orElseGet(OptionalDouble::empty);
    }
}
