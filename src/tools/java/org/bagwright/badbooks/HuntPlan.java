package org.bagwright.badbooks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ChartedBook;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookPlan;
import org.bagwright.search.BagSearch;

/**
 * What a plan says that a fitter acts on.
 *
 * @param choices the option of each slot, by golfer and slot
 * @param carriesM carry of each club today and as planned, metres
 * @param points penalty of the plan; NaN where the book is refused
 * @param messages what the command says
 */
record HuntPlan(Map<String, String> choices, Map<String, Double> carriesM, double points, List<Message> messages) {

    static HuntPlan of(ChartedBook charted, BookPlan plan) {
        Map<String, String> choices = new HashMap<>();
        Map<String, Double> carriesM = new HashMap<>();
        List<Message> messages = new ArrayList<>(charted.messages());
        double points = 0;
        for (int bag = 0; bag < charted.bags().size(); bag++) {
            BagResult result =
                    result(charted.bags().get(bag), plan.bags().get(bag).chosen());
            String golfer = result.golfer().name() + " ";
            List<Option> planned = result.optionsOf(result.planned());
            for (int slot = 0; slot < planned.size(); slot++) {
                choices.put(golfer + slot, choice(charted.book(), planned.get(slot)));
            }
            addCarries("today " + golfer, result.optionsOf(result.today()), carriesM);
            addCarries("plan " + golfer, planned, carriesM);
            result.broken(result.planned(), charted.book().settings())
                    .forEach(broken -> messages.add(Message.warning(broken.cell(), broken.words())));
            points += plan.bags().get(bag).score().penaltyPoints();
        }
        return new HuntPlan(choices, carriesM, points, messages);
    }

    private static BagResult result(BagOptions bag, List<Integer> chosen) {
        return BagResult.of(bag, BagSearch.state(bag, bag.today()), BagSearch.state(bag, chosen));
    }

    /** Settings count along the sleeve, so that another name for one is no other choice, and bends to a quarter of a degree. */
    private static String choice(Book book, Option option) {
        if (option.isEmpty()) {
            return "";
        }
        Choice choice = option.choice();
        int setting = book.sleeveOf(option.club())
                .map(sleeve -> sleeve.settings().stream()
                        .map(SleeveSetting::mark)
                        .toList()
                        .indexOf(choice.settingText()))
                .orElse(-1);
        return option.club().name() + " " + setting + " " + choice.weightingText() + " "
                + Math.rint(4 * choice.bend().loftDeg()) + " "
                + Math.rint(4 * choice.bend().lieDeg());
    }

    private static void addCarries(String whose, List<Option> options, Map<String, Double> carriesM) {
        for (Option option : options) {
            option.carryM().ifPresent(carryM -> carriesM.put(whose + option.clubText(), carryM));
        }
    }

    static HuntPlan refused(List<Message> problems) {
        return new HuntPlan(Map.of(), Map.of(), Double.NaN, problems);
    }

    boolean isRefused() {
        return Double.isNaN(points);
    }

    /** How many slots are set differently from another plan. */
    long moved(HuntPlan other) {
        return choices.entrySet().stream()
                .filter(choice -> !choice.getValue().equals(other.choices.get(choice.getKey())))
                .count();
    }

    /** The largest change of a carry, metres; of clubs that both plans have. */
    double carryMovedM(HuntPlan other) {
        return carriesM.entrySet().stream()
                .filter(carry -> other.carriesM.containsKey(carry.getKey()))
                .mapToDouble(carry -> Math.abs(carry.getValue() - other.carriesM.get(carry.getKey())))
                .max()
                .orElse(0);
    }

    /** What this plan says and another does not; first what asks for a look. */
    Stream<Message> fresh(HuntPlan other) {
        Set<String> before = other.messages.stream().map(Message::text).collect(Collectors.toSet());
        return messages.stream()
                .filter(message -> !before.contains(message.text()))
                .sorted((one, two) -> one.severity().compareTo(two.severity()));
    }

    /** What this plan says of a row and another does not, at least as severe as this. */
    Optional<Message> told(HuntPlan other, HuntBook.Place place, Message.Severity least) {
        return fresh(other)
                .filter(message -> message.severity().compareTo(least) <= 0)
                .filter(message -> message.cells().stream().anyMatch(cell -> isIn(cell, place)))
                .findFirst();
    }

    private static boolean isIn(String cell, HuntBook.Place place) {
        return cell.matches("'?" + place.sheet() + "'?!.*\\D" + (place.row() + 1)) || cell.equals(place.sheet());
    }
}
