package org.bagwright.domain.book;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;

/**
 * One reading of a loft-and-lie gauge on one club, with today's bend in it; at least one of the three numbers.
 *
 * @param golfer whose club
 * @param club which club
 * @param setting the mark of the setting at which it was read; empty is with the shaft in line with the bore
 * @param loftDeg gauge loft, degrees
 * @param lieDeg gauge lie, degrees
 * @param faceDeg face angle of the head soled as designed, degrees, closed positive
 * @param cell where the book has it
 */
public record Reading(
        String golfer,
        String club,
        Optional<String> setting,
        OptionalDouble loftDeg,
        OptionalDouble lieDeg,
        OptionalDouble faceDeg,
        String cell) {
    public Reading {
        Checks.named(golfer, "golfer");
        Checks.named(club, "club");
        Checks.that(
                loftDeg.isPresent() || lieDeg.isPresent() || faceDeg.isPresent(),
                "a reading needs a loft, a lie or a face");
        loftDeg.ifPresent(value -> Checks.within(Limit.LOFT_DEG, value, "loft"));
        lieDeg.ifPresent(value -> Checks.within(Limit.LIE_DEG, value, "lie"));
        faceDeg.ifPresent(value -> Checks.within(Limit.FACE_DEG, value, "face"));
    }
}
