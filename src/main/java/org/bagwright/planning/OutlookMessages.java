package org.bagwright.planning;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.BagOutlook;
import org.bagwright.domain.BagResult;
import org.bagwright.domain.CarryBand;
import org.bagwright.domain.ClubKind;
import org.bagwright.domain.Message;
import org.bagwright.domain.Numbers;
import org.bagwright.flight.ShotSpread;

/** What was assumed where a bag's sureness was worked out. */
final class OutlookMessages {
    private OutlookMessages() {}

    static Optional<Message> of(BagResult bag) {
        BagOutlook outlook = bag.outlook().orElseThrow();
        if (outlook.clubs().isEmpty()) {
            return Optional.empty();
        }
        List<String> assumed = outlook.bands().stream()
                .filter(CarryBand::spreadAssumed)
                .map(CarryBand::club)
                .toList();
        String shots = assumed.isEmpty()
                ? ""
                : " Single shots scatter by " + percent(Spreads.assumedRatio(ClubKind.DRIVER))
                        + " of the carry for driver and irons and " + percent(Spreads.assumedRatio(ClubKind.WEDGE))
                        + " for the others with fewer than " + ShotSpread.ENOUGH + " shots: "
                        + String.join(", ", assumed) + ".";
        return Optional.of(Message.assumed(
                bag.golfer().cell(),
                "How certain the gaps are depends on assumed spreads (standard deviations): "
                        + Numbers.trimmed(Spreads.GAUGE_DEG) + " degrees of loft for gauge and setting, "
                        + percent(Spreads.DAY_SPEED_RATIO) + " of head speed from day to day, at most "
                        + percent(Spreads.UNTOLD_AVERAGE_RATIO)
                        + " of the carry for an average of few or no shots." + shots));
    }

    private static String percent(double ratio) {
        return Numbers.trimmed(100 * ratio, 1) + " %";
    }
}
