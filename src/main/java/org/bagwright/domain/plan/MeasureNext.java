package org.bagwright.domain.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.units.Checks;

/**
 * What to measure next, so that the plan gets better.
 *
 * @param advice what is worth most, at most three, the best first
 * @param enough whether every planned club that flies has shots and the best advice brings little
 */
public record MeasureNext(List<Advice> advice, boolean enough) {
    /** What the program says where nothing that could be measured brings much. */
    public static final String ENOUGH = "further measuring gains little";

    public MeasureNext {
        advice = List.copyOf(advice);
    }

    /** The best advice in a line, such as {@code 5 shots with the 3 wood at setting 2+; would likely change the plan}. */
    public Optional<String> inWords() {
        return enough
                ? Optional.of(ENOUGH)
                : first().map(best -> best.inWords() + "; " + best.worth().words());
    }

    /** The advice that is worth most. */
    public Optional<Advice> first() {
        return advice.stream().max(Comparator.comparingDouble(Advice::worthPoints));
    }

    /** How a measurement is made. */
    public enum What {
        SHOTS("5 shots"),
        GAUGE("a gauge reading");

        private final String words;

        What(String words) {
            this.words = words;
        }

        /** What a person does. */
        public String words() {
            return words;
        }
    }

    /** What a measurement brings. */
    public enum Worth {
        LIKELY("would likely change the plan"),
        MAYBE("may change the plan"),
        LITTLE("little to gain");

        private final String words;

        Worth(String words) {
            this.words = words;
        }

        /** What a person reads. */
        public String words() {
            return words;
        }
    }

    /**
     * One measurement with what it is worth.
     *
     * @param slot the club's place in the bag
     * @param club its name
     * @param what what is done
     * @param setting the setting for it; empty for a club without a sleeve and for the gauge
     * @param worthPoints by how much the penalty is expected to fall, points
     * @param worth what that means
     */
    public record Advice(int slot, String club, What what, Optional<String> setting, double worthPoints, Worth worth) {
        public Advice {
            Checks.named(club, "club");
            Checks.notNegative(worthPoints, "worth");
        }

        /** What to do, such as {@code 5 shots with the 3 wood at setting 2+}. */
        public String inWords() {
            String at = setting.map(mark -> " at setting " + mark).orElse("");
            return what == What.SHOTS ? what.words() + " with the " + club + at : what.words() + " of the " + club;
        }
    }
}
