package org.bagwright.planning.outlook;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.CarryBand;
import org.bagwright.domain.text.Numbers;
import org.bagwright.flight.golfer.ShotSpread;

/** What was assumed where a bag's sureness was worked out. */
public final class OutlookMessages {
    private OutlookMessages() {}

    public static Optional<Message> of(BagResult bag) {
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
                        + " for the others where fewer than " + ShotSpread.ENOUGH + " shots tell it: "
                        + String.join(", ", assumed) + ".";
        return Optional.of(Message.assumed(
                bag.golfer().cell(),
                "How sure the gaps are rests on assumed spreads (standard deviations): "
                        + Numbers.trimmed(Spreads.GAUGE_DEG) + " degrees of loft for gauge and setting, "
                        + percent(Spreads.DAY_SPEED_RATIO) + " of head speed from day to day, at most "
                        + percent(Spreads.UNTOLD_AVERAGE_RATIO)
                        + " of the carry for an average that few or no shots tell." + shots));
    }

    private static String percent(double ratio) {
        return Numbers.trimmed(100 * ratio, 1) + " %";
    }
}
