package org.bagwright.geometry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.text.Numbers;
import org.bagwright.geometry.GaugeSolver.Solved;

/** What a fitter should know of the fit of one club's gauge readings, in plain words. */
final class GaugeNotes {
    private static final double SCATTER_CHANCE = 0.001;

    private final String club;
    private final List<Reading> readings;
    private final List<String> notes = new ArrayList<>();

    GaugeNotes(String club, List<Reading> readings) {
        this.club = club;
        this.readings = readings;
    }

    List<String> all() {
        return notes;
    }

    /** Each unknown that is held, with the reason and the value that is kept. */
    List<String> held(Solved solved, boolean hasSleeve) {
        double[] state = solved.solution().state();
        state[Unknown.CLOCK.index()] = solved.solution().clockOffsetH();
        return solved.held().entrySet().stream()
                .filter(entry -> hasSleeve || entry.getKey().index() < Unknown.BEND.index())
                .map(entry -> inWords(entry, state[entry.getKey().index()]))
                .toList();
    }

    private String inWords(Map.Entry<Unknown, String> held, double value) {
        Unknown unknown = held.getKey();
        return club + ": the readings do not determine the " + unknown.label() + " (" + held.getValue()
                + "); it is held at " + Numbers.trimmed(value) + " " + unknown.unit();
    }

    void conflict(Blunders.Suspect suspect) {
        Set<Integer> indexes = new LinkedHashSet<>(List.of(suspect.readingIndex()));
        indexes.addAll(suspect.rivals());
        String places = String.join(
                ", ", indexes.stream().map(index -> readings.get(index).cell()).toList());
        notes.add(club + ": readings disagree, but there are too few to say which is off; read again: " + places);
    }

    /** Notes when no one reading is to blame but all together are further off than the gauge explains in 1 set of 1000. */
    void scatter(GaugeSolution solution, int numbers, double repeatabilityDeg) {
        int spare = numbers - solution.free().size();
        if (spare < 1 || !notes.isEmpty()) {
            return;
        }
        double limit = new ChiSquaredDistribution(null, spare).inverseCumulativeProbability(1 - SCATTER_CHANCE);
        if (solution.sumOfSquares() > limit) {
            notes.add(club + ": the readings scatter more than a gauge good to " + Numbers.trimmed(repeatabilityDeg)
                    + " degrees explains");
        }
    }

    /** Notes when the bend found points away from the marks although the clock offset is held. */
    void marksReversed(GaugeSolution solution) {
        boolean held = !solution.free().contains(Unknown.CLOCK);
        if (held && Math.abs(solution.clockOffsetH()) > 3) {
            notes.add(club + ": the shaft leans opposite to what the marks say");
        }
    }
}
