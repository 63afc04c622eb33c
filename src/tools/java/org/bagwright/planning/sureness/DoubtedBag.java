package org.bagwright.planning.sureness;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.CarryOrigin;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.ExpectedShot;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;

/** A bag whose carries are doubted as a test wants it. */
public record DoubtedBag(BagOptions bag) {
    /** The bag with these doubts in its carries. */
    public BagOptions with(Function<ClubSetup, CarryDoubt> doubt, CarryOrigin origin) {
        List<SlotOptions> slots = bag.slots().stream()
                .map(slot -> new SlotOptions(
                        slot.slot(),
                        slot.clubs(),
                        slot.options().stream()
                                .map(option -> doubted(option, doubt, origin))
                                .toList(),
                        slot.todayIndex(),
                        slot.openIndexes()))
                .toList();
        return new BagOptions(bag.golfer(), slots, bag.gapWishM(), bag.aims());
    }

    /**
     * The bag with doubts like those of a golfer with few shots: 1.5 % of every carry and a slope by loft that all clubs
     * share, 1.5 % of its own and a slope of its own for each club.
     */
    public BagOptions withUsualDoubts() {
        return with(
                made -> {
                    double carryM = made.shot().orElseThrow().carryM();
                    double loftDeg = made.pose().gaugeLoftDeg();
                    double turnedDeg = loftDeg - made.club().head().loftDeg();
                    return CarryDoubt.of(
                            new double[] {0.015 * carryM, 0.01 * carryM * (loftDeg - 30) / 15, 0.005 * carryM},
                            new double[] {0.015 * carryM, 0.15 * turnedDeg});
                },
                CarryOrigin.LENT);
    }

    private static Option doubted(Option option, Function<ClubSetup, CarryDoubt> doubt, CarryOrigin origin) {
        if (option.carryM().isEmpty()) {
            return option;
        }
        ClubSetup made = option.setup().orElseThrow();
        ExpectedShot expected = made.expected().orElseThrow();
        ClubSetup with = new ClubSetup(
                made.club(),
                made.wishes(),
                made.choice(),
                made.pose(),
                made.deliveredFaceDeg(),
                Optional.of(new ExpectedShot(expected.shot(), doubt.apply(made), origin, expected.extended())),
                made.build(),
                made.match());
        return new Option(
                option.key(),
                Optional.of(with),
                option.changes(),
                option.terms(),
                option.closedReasons(),
                option.takes());
    }
}
