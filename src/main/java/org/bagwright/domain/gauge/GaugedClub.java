package org.bagwright.domain.gauge;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.club.Club;

/**
 * What the gauge readings of one club told.
 *
 * @param club the club as the book states it
 * @param designLoft loft of the head soled as designed, degrees
 * @param designLie lie of the head soled as designed, degrees
 * @param designFace face angle of the head soled as designed, degrees, closed positive
 * @param gaugeLoft what a gauge reads at the setting at which the book states the club, degrees
 * @param gaugeLie the same of the lie, degrees
 * @param bend bend of the sleeve, degrees: of the ring with the greatest stated bend; empty without a sleeve
 * @param clockOffset how much later, in hours, the shaft leans than the marks say; empty without a sleeve
 * @param readings every reading with what is left of it, in the order of the book
 * @param held what could not be determined and why, in plain words
 * @param notes what else a fitter should know, in plain words
 */
public record GaugedClub(
        Club club,
        GaugedNumber designLoft,
        GaugedNumber designLie,
        GaugedNumber designFace,
        GaugedNumber gaugeLoft,
        GaugedNumber gaugeLie,
        Optional<GaugedNumber> bend,
        Optional<GaugedNumber> clockOffset,
        List<GaugedReading> readings,
        List<String> held,
        List<String> notes) {
    public GaugedClub {
        readings = List.copyOf(readings);
        held = List.copyOf(held);
        notes = List.copyOf(notes);
    }
}
