package org.bagwright.geometry;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.StatedHead;
import org.bagwright.domain.gauge.GaugedClub;
import org.bagwright.geometry.Blunders.Suspect;
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
 * reading is flagged when another explains the conflict almost as well, or when fewer numbers would be determined without
 * it; then a note reports the conflict.
 */
public final class GaugeFit {
    private final Club club;
    private final GaugeModel model;
    private final double repeatabilityDeg;
    private final List<Reading> readings;
    private final List<Value> values;
    private final Set<Integer> flagged = new LinkedHashSet<>();
    private final GaugeNotes notes;

    private GaugeFit(Club club, Optional<Sleeve> sleeve, List<Reading> readings, double repeatabilityDeg) {
        this.club = club;
        this.repeatabilityDeg = repeatabilityDeg;
        this.readings = readings;
        model = new GaugeModel(club, sleeve);
        values = model.values(readings);
        notes = new GaugeNotes(club.name(), readings);
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
        notes.scatter(solution, kept().size(), repeatabilityDeg);
        if (model.hasSleeve()) {
            notes.marksReversed(solution);
        }
        return new GaugeReport(club, model, readings, solved).report(flagged, notes);
    }

    private Solved withoutBlunders(GaugeSolver solver) {
        Solved solved = solver.solve(values);
        Optional<Suspect> suspect = Blunders.suspect(solved.solution(), kept(), repeatabilityDeg, true);
        while (suspect.isPresent()) {
            Optional<Solved> without = without(suspect.get(), solved, solver);
            if (without.isEmpty()) {
                notes.conflict(suspect.get());
                return solved;
            }
            solved = without.get();
            suspect = Blunders.suspect(solved.solution(), kept(), repeatabilityDeg, false);
        }
        return solved;
    }

    /** Flags a reading and fits the others; empty, and no flag, when it may not be the one to blame or they need it. */
    private Optional<Solved> without(Suspect suspect, Solved solved, GaugeSolver solver) {
        flagged.add(suspect.readingIndex());
        boolean alone = suspect.rivals().isEmpty() && 2 * flagged.size() < readings.size();
        Optional<Solved> without = (alone ? Optional.of(solver.solve(kept())) : Optional.<Solved>empty())
                .filter(other -> other.held().keySet().equals(solved.held().keySet()));
        if (without.isEmpty()) {
            flagged.remove(suspect.readingIndex());
        }
        return without;
    }

    private List<Value> kept() {
        return values.stream()
                .filter(value -> !flagged.contains(value.readingIndex()))
                .toList();
    }
}
