package org.bagwright.planning.reasons;

import java.util.List;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.Option;

/** Which of its own musts one set-up of a club breaks. */
final class OwnMusts {
    /** The measures that a club has by itself. */
    static final List<Measure> MEASURES =
            List.of(Measure.LOFT, Measure.LIE, Measure.SITS, Measure.CARRY, Measure.SWINGWEIGHT);

    private final Golfer golfer;
    private final Aims aims;

    OwnMusts(Golfer golfer, Aims aims) {
        this.golfer = golfer;
        this.aims = aims;
    }

    /** What an option breaks of one measure's must, thousandths of a tolerance. */
    long breaks(Option option, Measure measure) {
        return option.setup()
                .map(setup -> setup.deviations(golfer.sitsRange()).get(measure))
                .map(off -> aims.of(measure).hardBreakThousandths(off))
                .orElse(0L);
    }
}
