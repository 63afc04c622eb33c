package org.bagwright.planning;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagScore;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A plan that is wrong in one number is never told. */
@Tag("analytic")
class PlanAuditTest {
    private static BookResult sound;

    @BeforeAll
    static void plan() throws Exception {
        sound = new Planning(1, 20).plan(Path.of("demo-data", "full.xlsx"));
    }

    private static BookResult with(BagResult bag) {
        return new BookResult(
                sound.book(),
                List.of(bag),
                sound.stock(),
                sound.proof(),
                sound.messages(),
                sound.seed(),
                sound.searchS());
    }

    @Test
    void soundPlan_passes() {
        assertDoesNotThrow(() -> PlanAudit.check(sound));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, -1, 1e-6, Double.NaN})
    void penaltyThatDoesNotAddUp_isRefused(double offPoints) {
        BagResult bag = sound.bags().get(0);
        BagState planned = bag.planned();
        BagState wrong = new BagState(
                planned.chosen(),
                new BagScore(planned.score().hardBreaks(), planned.score().penaltyPoints() + offPoints),
                planned.reach(),
                planned.gaps(),
                planned.spreads());
        PlanDisagreement told = assertThrows(
                PlanDisagreement.class, () -> PlanAudit.check(with(BagResult.of(bag.options(), bag.today(), wrong))));
        assertTrue(told.getMessage().contains("Golfer A: the penalty planned is shown as"), told.getMessage());
    }

    /** The numbers of two settings of the driver changed places, as a slip in a table would do it. */
    @Test
    void numbersOfAnotherSetting_areRefused() {
        BagResult bag = sound.bags().get(0);
        SlotOptions driver = bag.options().slots().get(0);
        int chosen = bag.planned().chosen().get(0);
        List<Option> options = new ArrayList<>(driver.options());
        Collections.swap(options, chosen, chosen == 0 ? 1 : chosen - 1);
        Option right = driver.options().get(chosen);
        Option taken = options.get(chosen);
        options.set(
                chosen,
                new Option(
                        right.key(),
                        taken.setup()
                                .map(setup -> new ClubSetup(
                                        right.club(),
                                        setup.wishes(),
                                        right.choice(),
                                        setup.pose(),
                                        setup.deliveredFaceDeg(),
                                        setup.expected(),
                                        setup.build(),
                                        setup.match())),
                        right.changes(),
                        right.terms(),
                        right.closedReasons(),
                        right.takes()));
        PlanDisagreement told =
                assertThrows(PlanDisagreement.class, () -> PlanAudit.check(with(withFirst(bag, driver, options))));
        assertTrue(told.getMessage().contains("differ when computed again"), told.getMessage());
    }

    private static BagResult withFirst(BagResult bag, SlotOptions slot, List<Option> options) {
        List<SlotOptions> slots = new ArrayList<>(bag.options().slots());
        slots.set(0, new SlotOptions(slot.slot(), slot.clubs(), options, slot.todayIndex(), slot.openIndexes()));
        BagOptions changed = new BagOptions(
                bag.golfer(), slots, bag.options().gapWishM(), bag.options().aims());
        return BagResult.of(changed, bag.today(), bag.planned());
    }
}
