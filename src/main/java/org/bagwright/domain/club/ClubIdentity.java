package org.bagwright.domain.club;

import org.bagwright.domain.units.Checks;

/**
 * Which club it is.
 *
 * @param golfer whose club
 * @param slot its place in the bag, 1 the longest
 * @param name what the book calls it
 * @param kind its kind
 * @param cell where the book names it
 */
public record ClubIdentity(String golfer, int slot, String name, ClubKind kind, String cell) {
    public ClubIdentity {
        Checks.named(golfer, "golfer");
        Checks.that(slot >= 1, "slot must be 1 or more");
        Checks.named(name, "club");
    }
}
