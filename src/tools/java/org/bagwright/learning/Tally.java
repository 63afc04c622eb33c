package org.bagwright.learning;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.bagwright.domain.units.LengthUnit;

/** How far predictions were off, and how often what was said to be likely came. */
final class Tally {
    static final double NARROW_SD = 1.2815515655446004;
    static final double WIDE_SD = 1.959963984540054;

    /** What is predicted. */
    enum Row {
        UNTRIED("carry at untried settings"),
        CHANGE("change from today"),
        GAP("gap, both clubs shot"),
        UNSHOT("club without shots");

        private final String label;

        Row(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }
    }

    /**
     * One prediction against the truth.
     *
     * @param errorM predicted less true, m
     * @param varianceM2 of the error, as stated, m2; 0 where nothing is stated
     */
    record Judged(double errorM, double varianceM2) {
        boolean within(double sds) {
            return errorM * errorM <= sds * sds * varianceM2;
        }
    }

    /**
     * The penalties of one golfer's plans, points.
     *
     * @param todayPoints true, of today's set-up
     * @param guessSaidPoints as stated, of the plan for the best guess
     * @param guessPoints true, of the same
     * @param likelySaidPoints as stated, of the plan for what is likely
     * @param likelyPoints true, of the same
     * @param leastPoints true, of the plan of one who knows everything
     */
    record Plans(
            double todayPoints,
            double guessSaidPoints,
            double guessPoints,
            double likelySaidPoints,
            double likelyPoints,
            double leastPoints) {}

    private final List<Plans> plans = new ArrayList<>();
    private final Map<Row, List<Judged>> rows = new EnumMap<>(Row.class);
    private final Chances chances = new Chances();
    private final Chances shares = new Chances();

    Tally() {
        for (Row row : Row.values()) {
            rows.put(row, new ArrayList<>());
        }
    }

    void add(Row row, double errorM, double varianceM2) {
        rows.get(row).add(new Judged(errorM, varianceM2));
    }

    void add(Plans planned) {
        plans.add(planned);
    }

    /** The mean of one penalty over all golfers, points; NaN without plans. */
    double meanPoints(ToDoubleFunction<Plans> penalty) {
        return plans.stream().mapToDouble(penalty).average().orElse(Double.NaN);
    }

    Tally add(Tally other) {
        other.rows.forEach((row, judged) -> rows.get(row).addAll(judged));
        chances.add(other.chances);
        shares.add(other.shares);
        plans.addAll(other.plans);
        return this;
    }

    int count(Row row) {
        return rows.get(row).size();
    }

    /** The error that this share of the predictions of a row does not exceed, yd. */
    double errorYd(Row row, double shareRatio) {
        double[] errorsM = rows.get(row).stream()
                .mapToDouble(judged -> Math.abs(judged.errorM()))
                .sorted()
                .toArray();
        int place = (int) Math.ceil(shareRatio * errorsM.length) - 1;
        return errorsM.length == 0 ? Double.NaN : LengthUnit.YARD.fromM(errorsM[Math.max(0, place)]);
    }

    /** The share of a row that is within so many of its own standard deviations; empty where nothing is stated. */
    OptionalDouble coverage(Row row, double sds) {
        List<Judged> judged = rows.get(row);
        return judged.isEmpty() || judged.stream().allMatch(one -> one.varianceM2() == 0)
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        (double) judged.stream().filter(one -> one.within(sds)).count() / judged.size());
    }

    /** The chances of gaps. */
    Chances chances() {
        return chances;
    }

    /** The shares of likely cases in which an option was said to be best, and whether it truly is. */
    Chances shares() {
        return shares;
    }
}
