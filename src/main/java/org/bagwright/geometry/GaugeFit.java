package org.bagwright.geometry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.StatedHead;
import org.bagwright.domain.gauge.GaugedClub;
import org.bagwright.domain.gauge.GaugedClub.GaugedSleeve;
import org.bagwright.domain.gauge.GaugedNumber;
import org.bagwright.domain.gauge.GaugedReading;
import org.bagwright.domain.text.Numbers;
import org.bagwright.geometry.GaugeModel.Value;
import org.bagwright.geometry.GaugeSolver.Solved;

/**
 * Finds a head and its sleeve from gauge readings: design loft, lie and face, the bend and how far the sleeve's marks are
 * off, by nonlinear least squares. Every number read counts alike; the gauge's repeatability is taken as known, so
 * standard errors come from it and not from what is left of the readings, and an interval of 1.96 of them holds the
 * truth in 95 of 100 fits.
 *
 * <p><b>Determined.</b> A number is reported as found when its standard error, with all others free, is at most 1 degree
 * for design loft, lie and face, 0.75 degree for the bend and 1 hour for the clock offset; else it is held at its stated
 * value and the rest is fitted again, the clock offset going first and the bend next. Nothing is found about a loft, lie
 * or face of which there is no reading, nor about bend and clock when all readings have the shaft leaning one way.
 *
 * <p><b>Flagged.</b> A number's residual is divided by its own standard deviation, repeatability times the square root of
 * one less its leverage; that equals its distance from what all other numbers expect, in standard deviations of that
 * distance. Among {@code m} numbers the greatest of {@code m} such ratios is naturally greater than any one, so the
 * limit is set for the whole set of readings (by Sidak's rule): a set without a blunder keeps clear in at least 95.5 % of
 * cases. That is 2.9 deviations for 6 readings of loft and lie and 3.0 for 9. A reading beyond it is flagged, left out, and the
 * rest is fitted and looked at again, now with a limit for 1 set in 500, since one blunder drags its neighbours along. No
 * reading is flagged when another explains the conflict almost as well, or when the others could not stand without it;
 * then a note tells of the conflict.
 */
public final class GaugeFit {
    /** Repeatability of a bench gauge, one standard deviation, degrees: common practice, no source. */
    public static final double REPEATABILITY_DEG = 0.25;

    private static final double SCATTER_CHANCE = 0.001;

    private final Club club;
    private final GaugeModel model;
    private final double repeatabilityDeg;
    private final List<Reading> readings;
    private final List<Value> values;
    private final Set<Integer> flagged = new LinkedHashSet<>();
    private final List<String> notes = new ArrayList<>();

    private GaugeFit(Club club, Optional<Sleeve> sleeve, List<Reading> readings, double repeatabilityDeg) {
        this.club = club;
        this.repeatabilityDeg = repeatabilityDeg;
        this.readings = readings;
        model = new GaugeModel(club, sleeve);
        values = model.values(readings);
    }

    /**
     * Fits one club.
     *
     * @param club the club as stated; the fit starts there and holds there what it cannot find
     * @param sleeve the sleeve it names
     * @param readings its readings, in any order, taken with today's hosel bend in the club; the bend is taken off them
     * @param repeatabilityDeg one standard deviation of the gauge, degrees, above 0
     * @throws IllegalArgumentException without readings, or when a reading or the club names a setting that is not there
     * @throws IllegalStateException when the fit does not end in finite numbers
     */
    public static GaugedClub fit(Club club, Optional<Sleeve> sleeve, List<Reading> readings, double repeatabilityDeg) {
        if (readings.isEmpty() || !(repeatabilityDeg > 0 && Double.isFinite(repeatabilityDeg))) {
            throw new IllegalArgumentException("a fit needs readings and a repeatability above 0");
        }
        return new GaugeFit(club, sleeve, List.copyOf(readings), repeatabilityDeg).found();
    }

    /**
     * What a club has to state so that it is read back as the head found.
     *
     * @param found says at which setting it is stated
     * @param sleeve the sleeve as it will be stated then
     * @throws IllegalArgumentException when no gauge could read such numbers
     */
    public static StatedHead stated(GaugedClub found, Optional<Sleeve> sleeve) {
        HeadDesign design = new HeadDesign(
                found.design().loft().valueMeasureUnits(),
                found.design().lie().valueMeasureUnits(),
                found.design().face().valueMeasureUnits());
        return SleeveOnHead.stated(design, found.club().head().statedAt(), sleeve);
    }

    private GaugedClub found() {
        Solved solved = withoutBlunders(new GaugeSolver(model, repeatabilityDeg));
        GaugeSolution solution = solved.solution();
        noteScatter(solution);
        noteMarksReversed(solution);
        return new GaugedClub(
                club,
                new GaugedClub.Design(
                        number(solution, Unknown.LOFT, solution.state()[0]),
                        number(solution, Unknown.LIE, solution.state()[1]),
                        number(solution, Unknown.FACE, solution.state()[2])),
                new GaugedClub.Gauge(
                        atStated(solution, Unknown.LOFT, club.head().loftDeg()),
                        atStated(solution, Unknown.LIE, club.head().lieDeg())),
                sleeve(solution),
                IntStream.range(0, readings.size())
                        .mapToObj(index -> checked(index, solution))
                        .toList(),
                heldInWords(solved),
                notes);
    }

    private Solved withoutBlunders(GaugeSolver solver) {
        Solved solved = solver.solve(values);
        Optional<Blunders.Suspect> suspect = Blunders.suspect(solved.solution(), kept(), repeatabilityDeg, true);
        while (suspect.isPresent()) {
            int index = suspect.get().readingIndex();
            flagged.add(index);
            boolean alone = suspect.get().rivals().isEmpty() && 2 * flagged.size() < readings.size();
            Optional<Solved> without = alone ? Optional.of(solver.solve(kept())) : Optional.empty();
            if (without.isEmpty()
                    || !without.get().held().keySet().equals(solved.held().keySet())) {
                flagged.remove(index);
                noteConflict(suspect.get());
                return solved;
            }
            solved = without.get();
            suspect = Blunders.suspect(solved.solution(), kept(), repeatabilityDeg, false);
        }
        return solved;
    }

    private List<Value> kept() {
        return values.stream()
                .filter(value -> !flagged.contains(value.readingIndex()))
                .toList();
    }

    private Optional<GaugedSleeve> sleeve(GaugeSolution solution) {
        return model.hasSleeve()
                ? Optional.of(new GaugedSleeve(
                        number(solution, Unknown.BEND, solution.bendDeg()),
                        number(solution, Unknown.CLOCK, solution.clockOffsetH())))
                : Optional.empty();
    }

    private GaugedNumber number(GaugeSolution solution, Unknown unknown, double value) {
        double stated = model.stated()[unknown.index()];
        return solution.free().contains(unknown)
                ? GaugedNumber.found(value, solution.standardError(unknown, 0), stated)
                : GaugedNumber.held(value, stated);
    }

    private GaugedNumber atStated(GaugeSolution solution, Unknown kind, double statedDeg) {
        Value value = model.atStated(kind);
        double expectedDeg = solution.expectedDeg(value);
        return solution.free().contains(kind)
                ? GaugedNumber.found(expectedDeg, solution.expectedErrorDeg(value), statedDeg)
                : GaugedNumber.held(expectedDeg, statedDeg);
    }

    private GaugedReading checked(int index, GaugeSolution solution) {
        return new GaugedReading(
                readings.get(index),
                residualDeg(index, Unknown.LOFT, solution),
                residualDeg(index, Unknown.LIE, solution),
                residualDeg(index, Unknown.FACE, solution),
                flagged.contains(index));
    }

    private OptionalDouble residualDeg(int index, Unknown kind, GaugeSolution solution) {
        return values.stream()
                .filter(value -> value.readingIndex() == index && value.kind() == kind)
                .mapToDouble(solution::residualDeg)
                .findFirst();
    }

    private List<String> heldInWords(Solved solved) {
        double[] state = solved.solution().state();
        state[Unknown.CLOCK.index()] = solved.solution().clockOffsetH();
        return solved.held().entrySet().stream()
                .filter(entry -> model.hasSleeve() || entry.getKey().index() < Unknown.BEND.index())
                .map(entry -> inWords(entry, state[entry.getKey().index()]))
                .toList();
    }

    private String inWords(Map.Entry<Unknown, String> held, double value) {
        Unknown unknown = held.getKey();
        return club.name() + ": the readings do not determine the " + unknown.label() + " (" + held.getValue()
                + "); it is held at " + Numbers.trimmed(value) + " " + unknown.unit();
    }

    private void noteConflict(Blunders.Suspect suspect) {
        Set<Integer> indexes = new LinkedHashSet<>(List.of(suspect.readingIndex()));
        indexes.addAll(suspect.rivals());
        String places = String.join(
                ", ", indexes.stream().map(index -> readings.get(index).cell()).toList());
        notes.add(
                club.name() + ": readings disagree, but there are too few to say which is off; read again: " + places);
    }

    /** Where no one reading is to blame but all together lie further off than the gauge explains in 1 set of 1000. */
    private void noteScatter(GaugeSolution solution) {
        int spare = kept().size() - solution.free().size();
        if (spare < 1 || !notes.isEmpty()) {
            return;
        }
        double limit = new ChiSquaredDistribution(null, spare).inverseCumulativeProbability(1 - SCATTER_CHANCE);
        if (solution.sumOfSquares() > limit) {
            notes.add(club.name() + ": the readings scatter more than a gauge good to "
                    + Numbers.trimmed(repeatabilityDeg) + " degrees explains");
        }
    }

    private void noteMarksReversed(GaugeSolution solution) {
        boolean held = !solution.free().contains(Unknown.CLOCK);
        if (held && model.hasSleeve() && Math.abs(solution.clockOffsetH()) > 3) {
            notes.add(club.name() + ": the shaft leans opposite to what the marks say");
        }
    }
}
