package org.bagwright.geometry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.gauge.GaugedClub;
import org.bagwright.domain.gauge.GaugedClub.GaugedSleeve;
import org.bagwright.domain.gauge.GaugedNumber;
import org.bagwright.domain.gauge.GaugedReading;
import org.bagwright.geometry.GaugeModel.Value;
import org.bagwright.geometry.GaugeSolver.Solved;

/** The solution of a fit as what the gauge readings of the club say. */
final class GaugeReport {
    private final Club club;
    private final GaugeModel model;
    private final List<Reading> readings;
    private final Solved solved;
    private final GaugeSolution solution;

    GaugeReport(Club club, GaugeModel model, List<Reading> readings, Solved solved) {
        this.club = club;
        this.model = model;
        this.readings = readings;
        this.solved = solved;
        solution = solved.solution();
    }

    /**
     * The report.
     *
     * @param flagged the readings that were left out, by their place in the list
     */
    GaugedClub report(Set<Integer> flagged, GaugeNotes notes) {
        return new GaugedClub(
                club,
                design(),
                gauge(),
                sleeve(),
                IntStream.range(0, readings.size())
                        .mapToObj(index -> checked(index, flagged.contains(index)))
                        .toList(),
                notes.held(solved, model.hasSleeve()),
                notes.all());
    }

    private GaugedClub.Design design() {
        double[] state = solution.state();
        return new GaugedClub.Design(
                number(Unknown.LOFT, state[0]), number(Unknown.LIE, state[1]), number(Unknown.FACE, state[2]));
    }

    private GaugedClub.Gauge gauge() {
        return new GaugedClub.Gauge(
                atStated(Unknown.LOFT, club.head().loftDeg()),
                atStated(Unknown.LIE, club.head().lieDeg()));
    }

    private Optional<GaugedSleeve> sleeve() {
        return model.hasSleeve()
                ? Optional.of(new GaugedSleeve(
                        number(Unknown.BEND, solution.bendDeg()), number(Unknown.CLOCK, solution.clockOffsetH())))
                : Optional.empty();
    }

    private GaugedNumber number(Unknown unknown, double value) {
        double stated = model.stated()[unknown.index()];
        return solution.free().contains(unknown)
                ? GaugedNumber.found(value, solution.standardError(unknown, 0), stated)
                : GaugedNumber.held(value, stated);
    }

    private GaugedNumber atStated(Unknown kind, double statedDeg) {
        Value value = model.atStated(kind);
        double expectedDeg = solution.expectedDeg(value);
        return solution.free().contains(kind)
                ? GaugedNumber.found(expectedDeg, solution.expectedErrorDeg(value), statedDeg)
                : GaugedNumber.held(expectedDeg, statedDeg);
    }

    private GaugedReading checked(int index, boolean flagged) {
        return new GaugedReading(
                readings.get(index),
                residualDeg(index, Unknown.LOFT),
                residualDeg(index, Unknown.LIE),
                residualDeg(index, Unknown.FACE),
                flagged);
    }

    private OptionalDouble residualDeg(int index, Unknown kind) {
        return model.values(readings).stream()
                .filter(value -> value.readingIndex() == index && value.kind() == kind)
                .mapToDouble(solution::residualDeg)
                .findFirst();
    }
}
