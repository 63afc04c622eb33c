package org.bagwright.domain.book;

import java.util.Optional;
import org.bagwright.domain.units.Checks;
import org.bagwright.domain.units.Units;

/**
 * What the sheet Start says about the whole book.
 *
 * @param title the fitter's title, if any
 * @param units the units the book is written in
 * @param air the air for every flight
 * @param ballModel which published ball model flies
 * @param lengthLimitM the club length limit to check against, metres
 * @param matching by what clubs are matched to each other
 * @param planFor what a plan is made for
 * @param shotHeadings what headings of files of shots mean, as the fitter has said it before; empty for none
 */
public record BookSettings(
        Optional<String> title,
        Units units,
        AirConditions air,
        BallModelKind ballModel,
        double lengthLimitM,
        Matching matching,
        PlanFor planFor,
        String shotHeadings) {
    private static final double LENGTH_LIMIT_M = 48 * 0.0254;

    public static final BookSettings DEFAULT = new BookSettings(
            Optional.empty(),
            Units.DEFAULT,
            AirConditions.DEFAULT,
            BallModelKind.BEARMAN_HARVEY,
            LENGTH_LIMIT_M,
            Matching.DEFAULT,
            PlanFor.WHAT_IS_LIKELY,
            "");

    /** What a plan is made for. */
    public enum PlanFor {
        /** All that carries may be, each as likely as it is. */
        WHAT_IS_LIKELY("what is likely"),
        /** The best guess of every carry, as if it was known. */
        BEST_GUESS("best guess");

        private final String label;

        PlanFor(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    public BookSettings {
        Checks.positive(lengthLimitM, "length limit");
    }

    /** A book that is planned for what is likely. */
    public BookSettings(
            Optional<String> title,
            Units units,
            AirConditions air,
            BallModelKind ballModel,
            double lengthLimitM,
            Matching matching) {
        this(title, units, air, ballModel, lengthLimitM, matching, PlanFor.WHAT_IS_LIKELY, "");
    }

    /** The same book under another ball model. */
    public BookSettings withBallModel(BallModelKind other) {
        return new BookSettings(title, units, air, other, lengthLimitM, matching, planFor, shotHeadings);
    }
}
