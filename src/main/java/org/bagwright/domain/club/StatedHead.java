package org.bagwright.domain.club;

import java.util.Optional;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Limit;

/**
 * What a gauge reads on the head, at one setting and before any bend.
 *
 * @param loftDeg gauge loft, degrees
 * @param lieDeg gauge lie, degrees
 * @param faceDeg face angle of the head soled as designed, degrees, closed positive
 * @param statedAt the mark of the setting at which these hold; empty is on the bore
 */
public record StatedHead(double loftDeg, double lieDeg, double faceDeg, Optional<String> statedAt) {
    public StatedHead {
        Checks.within(Limit.LOFT_DEG, loftDeg, "loft");
        Checks.within(Limit.LIE_DEG, lieDeg, "lie");
        Checks.within(Limit.FACE_DEG, faceDeg, "face");
    }
}
