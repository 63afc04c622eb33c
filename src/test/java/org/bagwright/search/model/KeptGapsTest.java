package org.bagwright.search.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BookPlan;
import org.bagwright.search.BagSearch;
import org.bagwright.search.Enumeration;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Bags of golfers who wish a gap of its own after each slot, as today's gaps are. */
@Tag("analytic")
class KeptGapsTest {
    private static BagOptions small(long seed) {
        BagOptions bag = TestBags.small(seed);
        Map<Integer, Double> keptM = new HashMap<>();
        for (SlotOptions slot : bag.slots()) {
            keptM.put(slot.slot(), 4.0 + (seed * 7 + slot.slot() * 5L) % 17);
        }
        keptM.remove((int) (seed % 3) + 1);
        return keeping(bag, bag.gapWishM(), keptM);
    }

    /** The bag with kept gaps; each option is of a club of its slot. */
    private static BagOptions keeping(BagOptions bag, double wishM, Map<Integer, Double> keptM) {
        List<SlotOptions> slots =
                bag.slots().stream().map(KeptGapsTest::ofItsSlot).toList();
        return new BagOptions(bag.golfer(), slots, wishM, keptM, bag.aims());
    }

    private static SlotOptions ofItsSlot(SlotOptions slot) {
        Club club = slot.clubs().get(0);
        List<Option> options = slot.options().stream()
                .map(option -> new Option(
                        option.key(),
                        option.setup().map(made -> TestBags.setup(club, made.choice(), made.shot(), made.match())),
                        option.changes(),
                        option.terms(),
                        option.closedReasons(),
                        option.takes()))
                .toList();
        return new SlotOptions(slot.slot(), slot.clubs(), options, slot.todayIndex(), slot.openIndexes());
    }

    @Test
    void plan_isTheBestOfAllChoices() {
        List<BagOptions> bags =
                LongStream.range(0, 100).mapToObj(KeptGapsTest::small).toList();
        BookPlan plan = TestBags.plan(new BagSearch(new SearchLimits(1, 60)), bags);
        assertTrue(plan.proven());
        for (int place = 0; place < bags.size(); place++) {
            List<Integer> best = Enumeration.best(bags.get(place));
            assertEquals(
                    new PlainScore(bags.get(place), best).score(),
                    plan.bags().get(place).score(),
                    "bag " + place);
        }
    }

    /** 150 to 138: 2 m off a kept gap of 10, (2/3)^2 x 2 points; 138 to 130: 1 m off the 7 of the bag, (1/3)^2 x 2. */
    @Test
    void slotWithoutAKeptGap_hasTheWishOfTheBag() {
        BagOptions bag = TestBags.bag(
                TestBags.iron(1, TestBags.carrying(150)),
                TestBags.iron(2, TestBags.carrying(138)),
                TestBags.iron(3, TestBags.carrying(130)));
        BagOptions kept = keeping(bag, 7, Map.of(1, 10.0));
        assertEquals(
                8.0 / 9 + 2.0 / 9,
                new PlainScore(kept, List.of(0, 0, 0)).score().penaltyPoints(),
                1e-9);
    }
}
