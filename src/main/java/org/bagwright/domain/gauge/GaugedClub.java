package org.bagwright.domain.gauge;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.bagwright.domain.club.Club;

/**
 * What the gauge readings of one club say.
 *
 * @param club the club as the book states it
 * @param design the head soled as designed
 * @param gauge what a gauge reads at the setting at which the book states the club; held where the design is
 * @param sleeve its sleeve; empty for a glued shaft
 * @param readings every reading with what is left of it, in the order of the book
 * @param held what could not be determined and at what it is held, in plain words
 * @param notes what else a fitter should know, in plain words
 */
public record GaugedClub(
        Club club,
        Design design,
        Gauge gauge,
        Optional<GaugedSleeve> sleeve,
        List<GaugedReading> readings,
        List<String> held,
        List<String> notes) {
    public GaugedClub {
        readings = List.copyOf(readings);
        held = List.copyOf(held);
        notes = List.copyOf(notes);
    }

    /**
     * A head soled as designed.
     *
     * @param loft loft, degrees
     * @param lie lie, degrees
     * @param face face angle, degrees, closed positive
     */
    public record Design(GaugedNumber loft, GaugedNumber lie, GaugedNumber face) {}

    /**
     * What a loft and lie gauge reads.
     *
     * @param loft loft, degrees
     * @param lie lie, degrees
     */
    public record Gauge(GaugedNumber loft, GaugedNumber lie) {}

    /**
     * A sleeve.
     *
     * @param bend bend, degrees: of the ring with the greatest stated bend, the others in proportion
     * @param clockOffset how much later, in hours, the shaft leans than the marks say
     */
    public record GaugedSleeve(GaugedNumber bend, GaugedNumber clockOffset) {}

    /** How many readings the fit used. */
    public long used() {
        return readings.stream().filter(reading -> !reading.flagged()).count();
    }

    /** How many numbers were read beyond those that the readings determine. */
    int spareNumbers() {
        long read = usedResidualsDeg().count();
        long found = Stream.concat(
                        Stream.of(design.loft(), design.lie(), design.face()),
                        sleeve.stream().flatMap(one -> Stream.of(one.bend(), one.clockOffset())))
                .filter(number -> !number.held())
                .count();
        return (int) (read - found);
    }

    /** The sum of the squares of what is left of its readings, square degrees. */
    double squaredResidualsDeg2() {
        return usedResidualsDeg().map(deg -> deg * deg).sum();
    }

    private DoubleStream usedResidualsDeg() {
        return readings.stream()
                .filter(reading -> !reading.flagged())
                .flatMap(reading ->
                        Stream.of(reading.loftResidualDeg(), reading.lieResidualDeg(), reading.faceResidualDeg()))
                .flatMapToDouble(OptionalDouble::stream);
    }

    /** Its readings in words, such as {@code 3 readings of Driver (1 left out)}. */
    public String source() {
        long out = readings.size() - used();
        return used()
                + (used() == 1 ? " reading of " : " readings of ")
                + club.name()
                + (out == 0 ? "" : " (" + out + " left out)");
    }
}
