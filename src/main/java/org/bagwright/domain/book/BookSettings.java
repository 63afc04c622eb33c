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
 */
public record BookSettings(
        Optional<String> title,
        Units units,
        AirConditions air,
        BallModelKind ballModel,
        double lengthLimitM,
        Matching matching) {
    private static final double LENGTH_LIMIT_M = 48 * 0.0254;

    public static final BookSettings DEFAULT = new BookSettings(
            Optional.empty(),
            Units.DEFAULT,
            AirConditions.DEFAULT,
            BallModelKind.BEARMAN_HARVEY,
            LENGTH_LIMIT_M,
            Matching.DEFAULT);

    public BookSettings {
        Checks.positive(lengthLimitM, "length limit");
    }

    /** The same book under another ball model. */
    public BookSettings withBallModel(BallModelKind other) {
        return new BookSettings(title, units, air, other, lengthLimitM, matching);
    }
}
