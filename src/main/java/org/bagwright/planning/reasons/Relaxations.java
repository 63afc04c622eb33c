package org.bagwright.planning.reasons;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.LiveChoice;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.StatedLimit;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ClosedReason;
import org.bagwright.domain.option.HardRule;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.Relaxation;
import org.bagwright.search.BagSearch;

/** What holds a plan back: drops each pin, limit and must by itself and plans the bag again. */
final class Relaxations {
    private static final double WORTH_SAYING_POINTS = 0.005;

    private final BagSearch search;
    private final BagOptions bag;
    private final BagState planned;
    private final List<Integer> stockLeft;
    private final Book book;
    private final List<Relaxation> found = new ArrayList<>();

    private Relaxations(BagSearch search, Book book, BagOptions bag, BagState planned, List<Integer> stockLeft) {
        this.search = search;
        this.bag = bag;
        this.planned = planned;
        this.stockLeft = stockLeft;
        this.book = book;
    }

    /**
     * What would bring anything, the most first.
     *
     * @param book the book, for the pins of its sheet Plan
     * @param stock what all bags share
     * @param stockLeft the pieces of each item that the plans of the other bags leave to this one
     */
    static List<Relaxation> of(
            BagSearch search,
            Book book,
            BagOptions bag,
            BagState planned,
            List<StockLimit> stock,
            List<Integer> stockLeft) {
        Relaxations made = new Relaxations(search, book, bag, planned, stockLeft);
        made.pins();
        made.settings();
        made.shaft();
        made.changes();
        made.stock(stock);
        made.measures();
        made.limits();
        made.found.sort(Comparator.comparingLong(Relaxation::fewerBreaks)
                .thenComparingDouble(Relaxation::gainPoints)
                .reversed());
        return made.found;
    }

    private void pins() {
        for (int slot = 0; slot < bag.slots().size(); slot++) {
            Optional<LiveChoice> live =
                    book.pinOf(bag.golfer().name(), bag.slots().get(slot).slot());
            Optional<Club> club =
                    bag.slots().get(slot).clubs().stream().filter(Club::pinned).findFirst();
            if (live.isPresent()) {
                String also = club.map(pinned -> " and in " + pinned.cell()).orElse("");
                String what =
                        "unpin slot " + live.get().slot() + " (" + live.get().inWords() + ") on the sheet Plan";
                lettingGo(live.get().cell(), what + also, Set.of(ClosedReason.PIN), slot);
            } else if (club.isPresent()) {
                lettingGo(club.get().cell(), "unpin " + club.get().name(), Set.of(ClosedReason.PIN), slot);
            }
        }
    }

    private void settings() {
        for (int slot = 0; slot < bag.slots().size(); slot++) {
            Optional<Club> limited = bag.slots().get(slot).clubs().stream()
                    .filter(club ->
                            !club.freedom().allowed().isEmpty() && club.sleeve().isPresent())
                    .findFirst();
            int held = slot;
            limited.ifPresent(club -> lettingGo(
                    club.cell(), "allow every setting of " + club.name(), Set.of(ClosedReason.SETTING), held));
        }
    }

    private void lettingGo(String cell, String what, Set<ClosedReason> closedReasons, int slot) {
        BagOptions free = bag.withOpen((place, option) ->
                place == slot ? isOpenWithout(place, option, closedReasons) : isOpenNow(place, option));
        tell(cell, what, search.best(free, stockLeft));
    }

    private void shaft() {
        if (bag.golfer().address().keepsShaftAligned()) {
            BagOptions free = bag.withOpen((place, option) ->
                    isOpenNow(place, option) || isOpenWithout(place, option, Set.of(ClosedReason.SHAFT)));
            tell(
                    bag.golfer().cell(),
                    "let settings turn the shaft of " + bag.golfer().name(),
                    search.best(free, stockLeft));
        }
    }

    private boolean isOpenWithout(int slot, int option, Set<ClosedReason> closedReasons) {
        return closedReasons.containsAll(
                bag.slots().get(slot).options().get(option).closedReasons());
    }

    private boolean isOpenNow(int slot, int option) {
        return bag.slots().get(slot).openIndexes().contains(option);
    }

    private void changes() {
        if (bag.mostChanges().isPresent()) {
            BagOptions free = bag.withMostChanges(OptionalInt.empty());
            tell(
                    bag.golfer().cell(),
                    "allow " + bag.golfer().name() + " more than "
                            + bag.mostChanges().getAsInt() + " changes",
                    search.best(free, stockLeft));
        }
    }

    private void stock(List<StockLimit> stock) {
        for (int item = 0; item < stock.size(); item++) {
            int place = item;
            int taken = bag.taken(place, planned.chosen());
            boolean wanted = bag.slots().stream()
                    .flatMap(slot -> slot.options().stream())
                    .anyMatch(option -> option.takes().get(place) > 0);
            if (wanted && taken >= stockLeft.get(place)) {
                List<Integer> more = new ArrayList<>(stockLeft);
                more.set(place, more.get(place) + 1);
                tell(
                        stock.get(item).item().cell(),
                        "have one more of " + stock.get(item).item().inWords(),
                        search.best(bag, more));
            }
        }
    }

    private void measures() {
        for (Measure measure : Measure.values()) {
            if (bag.aims().of(measure).isHard()) {
                BagOptions free = bag.keeping(rule -> !isMustOf(rule, measure));
                tell("Aims", "let " + measure.label() + " miss its must", search.best(free, stockLeft));
            }
        }
    }

    private static boolean isMustOf(HardRule rule, Measure measure) {
        return rule instanceof HardRule.Must must && must.measure() == measure;
    }

    /** The limits of the golfer, and those of every club that may fill a slot. */
    private void limits() {
        bag.golfer().limits().all().forEach(limit -> without(limit, ""));
        bag.slots().stream()
                .flatMap(slot -> slot.clubs().stream())
                .forEach(club -> club.freedom().limits().all().forEach(limit -> without(limit, " of " + club.name())));
    }

    /** Whether some option breaks limits of a kind; gaps are known only in pairs. */
    private boolean mayBind(LimitKind kind) {
        return kind.quantity() == LimitKind.Quantity.GAP
                || bag.slots().stream()
                        .flatMap(slot -> slot.options().stream())
                        .anyMatch(option -> option.terms().limitBreaks(kind) > 0);
    }

    /** The wish stays: what a look costs that is outside is counted all the same. */
    private void without(StatedLimit limit, String of) {
        if (!mayBind(limit.kind())) {
            return;
        }
        BagOptions free = bag.keeping(rule -> !(rule instanceof HardRule.Kept kept && kept.limit().equals(limit)));
        tell(limit.cell(), "without " + limit.kind().label() + of, search.best(free, stockLeft));
    }

    /** Keeps what gains something; a plan that trades a must away is judged by its penalty alone. */
    private void tell(String cell, String what, Optional<BagPlan> relaxed) {
        relaxed.ifPresent(plan -> tell(cell, what, plan));
    }

    private void tell(String cell, String what, BagPlan relaxed) {
        BagState now = planned;
        double gainPoints = now.score().penaltyPoints() - relaxed.score().penaltyPoints();
        long fewerBreaks = now.score().hardBreaks() - relaxed.score().hardBreaks();
        if (fewerBreaks > 0 || (fewerBreaks == 0 && gainPoints > WORTH_SAYING_POINTS)) {
            found.add(new Relaxation(cell, what, gainPoints, fewerBreaks));
        }
    }
}
