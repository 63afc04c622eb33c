package org.bagwright.planning.reasons;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.OtherPlan;
import org.bagwright.domain.plan.Step;
import org.bagwright.search.BagSearch;

/** Plans nearly as good as the best, but different in a way that a fitter cares about; each the best of its sort. */
final class OtherPlans {
    /** What a plan with fewer changes may cost more, points. */
    private static final double STATED_LOSS_POINTS = 1;

    private final BagSearch search;
    private final BagOptions bag;
    private final BagState planned;
    private final List<Integer> stockLeft;
    private final List<OtherPlan> others = new ArrayList<>();

    private final List<String> unsettled = new ArrayList<>();

    /** @param stockLeft the pieces of each item that the plans of the other bags leave to this one */
    OtherPlans(BagSearch search, BagOptions bag, BagState planned, List<Integer> stockLeft) {
        this.search = search;
        this.bag = bag;
        this.planned = planned;
        this.stockLeft = stockLeft;
    }

    /** Looks for all of them. */
    OtherPlans find(List<Step> steps) {
        conditions().forEach(this::add);
        addFewestChanges(steps);
        return this;
    }

    List<OtherPlan> found() {
        return others;
    }

    /** The differences whose best plan was not settled in the time. */
    List<String> unsettled() {
        return unsettled;
    }

    private Map<String, BiPredicate<Integer, Option>> conditions() {
        Map<String, BiPredicate<Integer, Option>> conditions = new LinkedHashMap<>();
        conditions.put("another driver setting", this::isAnotherDriverSetting);
        conditions.put(
                "no shaft turned",
                (slot, option) -> option.setup().filter(ClubSetup::turnsShaft).isEmpty());
        conditions.put(
                "nothing bent",
                (slot, option) -> option.isEmpty()
                        || option.choice()
                                .bend()
                                .equals(option.club().tidiedToday().bend()));
        conditions.put(
                "no weights moved",
                (slot, option) -> option.isEmpty()
                        || option.choice()
                                .weighting()
                                .equals(option.club().today().weighting()));
        conditions.put(
                "the clubs of today",
                (slot, option) -> option.isEmpty()
                        ? bag.slots().get(slot).today().isEmpty()
                        : option.club().inBag());
        return conditions;
    }

    private boolean isAnotherDriverSetting(int slot, Option option) {
        Option chosen = bag.slots().get(slot).options().get(planned.chosen().get(slot));
        boolean adjustable = !chosen.isEmpty()
                && chosen.club().kind() == ClubKind.DRIVER
                && chosen.club().sleeve().isPresent();
        return !adjustable
                || option.isEmpty()
                || !option.club().equals(chosen.club())
                || !option.choice().setting().equals(chosen.choice().setting());
    }

    private void add(String difference, BiPredicate<Integer, Option> condition) {
        if (isMet(condition)) {
            return;
        }
        BagOptions variant = bag.withOpen((slot, index) -> isOpen(slot, index, condition));
        if (canMeet(variant, condition)) {
            search.best(variant, stockLeft, planned.chosen())
                    .ifPresentOrElse(
                            plan -> keep(difference, BagSearch.state(bag, plan.chosen())),
                            () -> unsettled.add(difference));
        }
    }

    private boolean isOpen(int slot, int index, BiPredicate<Integer, Option> condition) {
        Option option = bag.slots().get(slot).options().get(index);
        return option.open() && condition.test(slot, option);
    }

    private boolean isMet(BiPredicate<Integer, Option> condition) {
        for (int slot = 0; slot < bag.slots().size(); slot++) {
            if (!condition.test(
                    slot, bag.slots().get(slot).options().get(planned.chosen().get(slot)))) {
                return false;
            }
        }
        return true;
    }

    private static boolean canMeet(BagOptions variant, BiPredicate<Integer, Option> condition) {
        for (int slot = 0; slot < variant.slots().size(); slot++) {
            List<Option> options = variant.slots().get(slot).options();
            for (int index : variant.slots().get(slot).openIndexes()) {
                if (!condition.test(slot, options.get(index))) {
                    return false;
                }
            }
        }
        return true;
    }

    private void addFewestChanges(List<Step> steps) {
        double most = planned.score().penaltyPoints() + STATED_LOSS_POINTS;
        steps.stream()
                .filter(step -> step.state().score().penaltyPoints() <= most)
                .filter(step ->
                        step.state().score().hardBreaks() <= planned.score().hardBreaks())
                .findFirst()
                .filter(step -> step.changes() < changes(planned))
                .ifPresent(step ->
                        keep("fewest changes for at most " + (int) STATED_LOSS_POINTS + " point more", step.state()));
    }

    private int changes(BagState state) {
        return bag.chosen(state.chosen()).stream().mapToInt(Option::changes).sum();
    }

    /** Only what breaks no more than the plan, and is not listed yet. */
    private void keep(String difference, BagState state) {
        boolean known = state.chosen().equals(planned.chosen())
                || others.stream().anyMatch(other -> other.state().chosen().equals(state.chosen()));
        if (!known && state.score().hardBreaks() <= planned.score().hardBreaks()) {
            others.add(new OtherPlan(difference, state));
        }
    }
}
