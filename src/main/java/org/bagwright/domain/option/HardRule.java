package org.bagwright.domain.option;

import java.util.Optional;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.StatedLimit;

/** A rule of a book that every plan keeps which can, whatever it costs. */
public sealed interface HardRule {

    /**
     * A measure may not be missed by more than its tolerance.
     *
     * @param measure the measure
     * @param club the club; empty for a measure of the whole bag
     */
    record Must(Measure measure, Optional<Club> club) implements HardRule {}

    /**
     * A limit of a golfer or a club.
     *
     * @param limit the limit
     * @param club the club that must keep it; for a gap the longer one
     */
    record Kept(StatedLimit limit, Club club) implements HardRule {}
}
