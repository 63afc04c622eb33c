package org.bagwright.geometry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.StatedHead;

/**
 * What gauge readings told about a head and its sleeve.
 *
 * @param designLoft design loft, degrees
 * @param designLie design lie, degrees
 * @param designFace design face angle, degrees, closed positive
 * @param gaugeLoft what a gauge reads at the setting at which the club is stated, degrees; held where the loft is
 * @param gaugeLie the same of the lie, degrees
 * @param bend bend of the sleeve, degrees: of the ring with the greatest stated bend, the others in proportion; empty
 *     without a sleeve
 * @param statedBendDeg what the sleeve states of that ring, degrees; 0 without a sleeve
 * @param clockOffset how much later, in hours, the shaft leans than the marks say; empty without a sleeve
 * @param readings every reading with what is left of it, in the order given
 * @param held what could not be determined and at what it is held, in plain words
 * @param notes what else a fitter should know, in plain words
 */
public record FittedClub(
        Estimate designLoft,
        Estimate designLie,
        Estimate designFace,
        Estimate gaugeLoft,
        Estimate gaugeLie,
        Optional<Estimate> bend,
        double statedBendDeg,
        Optional<Estimate> clockOffset,
        List<CheckedReading> readings,
        List<String> held,
        List<String> notes) {
    public FittedClub {
        readings = List.copyOf(readings);
        held = List.copyOf(held);
        notes = List.copyOf(notes);
    }

    /** The head as found. */
    public HeadDesign design() {
        return new HeadDesign(
                designLoft.valueMeasureUnits(), designLie.valueMeasureUnits(), designFace.valueMeasureUnits());
    }

    /**
     * What the club has to state so that it is read back as the head found.
     *
     * @param club says at which setting it is stated
     * @param sleeve the sleeve as it will be stated then
     * @throws IllegalArgumentException when no gauge could read such numbers
     */
    public StatedHead stated(Club club, Optional<Sleeve> sleeve) {
        return SleeveOnHead.stated(design(), club.head().statedAt(), sleeve);
    }

    /**
     * A reading less what the fit expects of it.
     *
     * @param reading the reading
     * @param loftResidualDeg loft read less loft expected, degrees
     * @param lieResidualDeg lie read less lie expected, degrees
     * @param faceResidualDeg face read less face expected, degrees
     * @param flagged whether it disagrees with the others and was left out of the fit
     */
    public record CheckedReading(
            Reading reading,
            OptionalDouble loftResidualDeg,
            OptionalDouble lieResidualDeg,
            OptionalDouble faceResidualDeg,
            boolean flagged) {}
}
