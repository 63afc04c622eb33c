package org.bagwright.planning.reasons;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.PlanReasons;
import org.bagwright.domain.plan.Step;
import org.bagwright.domain.plan.WorkProgress;
import org.bagwright.search.BagSearch;
import org.bagwright.search.BagSteps;

/**
 * Why a plan is as it is: step by step, against others, and what holds it back. Each bag is looked at by itself, with what
 * the plans of the others leave of the stock.
 */
public final class PlanExplanation {
    /** With more bags than this only the steps are worked out: a team's coach asks for little more, and waits for it. */
    static final int MOST_BAGS_IN_FULL = 40;

    private final BagSearch search;
    private final Book book;
    private final List<StockLimit> stock;
    private final boolean proven;
    private final WorkProgress work;
    private final List<Message> messages = new ArrayList<>();

    /** @param proven whether the plan of the book is proven best */
    public PlanExplanation(BagSearch search, Book book, List<StockLimit> stock, boolean proven, WorkProgress work) {
        this.search = search;
        this.book = book;
        this.stock = stock;
        this.proven = proven;
        this.work = work;
    }

    /** What a person should know: musts that cannot all be met. */
    public List<Message> messages() {
        return messages;
    }

    /** The bags with their steps and, if they are few, other plans and relaxations. */
    public List<BagResult> with(List<BagResult> bags) {
        return IntStream.range(0, bags.size())
                .mapToObj(place -> with(place, bags))
                .toList();
    }

    private BagResult with(int place, List<BagResult> all) {
        work.at(WorkProgress.Stage.REASONS, place, all.size());
        BagResult bag = all.get(place);
        List<Integer> stockLeft = stockLeft(place, all);
        BagPlan planned = new BagPlan(bag.planned().chosen(), bag.planned().score());
        BagSteps found = search.steps(bag.options(), stockLeft, planned, proven);
        List<Step> steps = steps(bag, found.plans());
        List<String> unsettled = new ArrayList<>();
        if (!found.settled()) {
            unsettled.add("the steps from " + steps.size() + (steps.size() == 1 ? " change on" : " changes on"));
        }
        if (all.size() > MOST_BAGS_IN_FULL) {
            return bag.withReasons(new PlanReasons(steps, List.of(), List.of(), unsettled));
        }
        OtherPlans others = new OtherPlans(search, bag.options(), bag.planned(), stockLeft).find(steps);
        Relaxations relaxations = new Relaxations(search, book, bag.options(), bag.planned(), stockLeft).find(stock);
        others.unsettled().forEach(what -> unsettled.add("another plan: " + what));
        relaxations.unsettled().forEach(what -> unsettled.add("whether it would help to " + what));
        if (bag.planned().score().hardBreaks() > 0) {
            conflict(bag, stockLeft, unsettled);
        }
        return bag.withReasons(new PlanReasons(steps, others.found(), relaxations.found(), unsettled));
    }

    private void conflict(BagResult bag, List<Integer> stockLeft, List<String> unsettled) {
        MustConflict conflict =
                new MustConflict(search, bag.options(), stockLeft, bag.planned().chosen());
        conflict.smallest()
                .ifPresent(text -> messages.add(
                        Message.warning(bag.golfer().cell(), bag.golfer().name() + ": " + text)));
        if (!conflict.settled()) {
            unsettled.add("which musts are in conflict");
        }
    }

    private static List<Step> steps(BagResult bag, List<BagPlan> plans) {
        return IntStream.range(0, plans.size())
                .mapToObj(changes -> new Step(
                        changes,
                        BagSearch.state(bag.options(), plans.get(changes).chosen())))
                .toList();
    }

    /** What the plans of all other bags leave, at least 0 of each item. */
    private List<Integer> stockLeft(int place, List<BagResult> all) {
        return IntStream.range(0, stock.size())
                .mapToObj(item -> Math.max(0, stock.get(item).available() - takenByOthers(item, place, all)))
                .toList();
    }

    private static int takenByOthers(int item, int place, List<BagResult> all) {
        return IntStream.range(0, all.size())
                .filter(other -> other != place)
                .map(other -> all.get(other)
                        .options()
                        .taken(item, all.get(other).planned().chosen()))
                .sum();
    }
}
