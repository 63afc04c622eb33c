package org.bagwright.domain.option;

import java.util.Optional;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Club;

/** Whether a must is kept. */
@FunctionalInterface
public interface MustTest {
    /** Whether the must of a measure is kept: that of one club, or of the whole bag if there is no club. */
    boolean keeps(Measure measure, Optional<Club> club);
}
