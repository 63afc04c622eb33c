package org.bagwright.domain.gauge;

import java.util.OptionalDouble;
import org.bagwright.domain.book.Reading;

/**
 * A reading less what the fit expects of it.
 *
 * @param reading the reading
 * @param loftResidualDeg loft read less loft expected, degrees; empty where no loft was read
 * @param lieResidualDeg lie read less lie expected, degrees
 * @param faceResidualDeg face read less face expected, degrees
 * @param flagged whether it disagrees with the others and was left out of the fit
 */
public record GaugedReading(
        Reading reading,
        OptionalDouble loftResidualDeg,
        OptionalDouble lieResidualDeg,
        OptionalDouble faceResidualDeg,
        boolean flagged) {}
