package org.bagwright.badbooks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;

/**
 * What a plan says that a fitter acts on.
 *
 * @param choices the option of each slot, by golfer and slot
 * @param carriesM carry of each club today and as planned, metres
 * @param points penalty of the plan; NaN where the book is refused
 * @param messages what the command says
 */
record HuntPlan(Map<String, String> choices, Map<String, Double> carriesM, double points, List<Message> messages) {

    static HuntPlan of(BookResult result) {
        Map<String, String> choices = new HashMap<>();
        Map<String, Double> carriesM = new HashMap<>();
        for (BagResult bag : result.bags()) {
            String golfer = bag.golfer().name();
            bag.optionsOf(bag.planned())
                    .forEach(option -> choices.put(
                            golfer + " "
                                    + (option.isEmpty() ? "" : option.club().name()),
                            option.key()));
            for (Option option : bag.optionsOf(bag.today())) {
                option.carryM().ifPresent(carryM -> carriesM.put("today " + golfer + " " + option.clubText(), carryM));
            }
            for (Option option : bag.optionsOf(bag.planned())) {
                option.carryM().ifPresent(carryM -> carriesM.put("plan " + golfer + " " + option.clubText(), carryM));
            }
        }
        return new HuntPlan(choices, carriesM, result.plannedPoints(), result.messages());
    }

    static HuntPlan refused(List<Message> problems) {
        return new HuntPlan(Map.of(), Map.of(), Double.NaN, problems);
    }

    boolean isRefused() {
        return Double.isNaN(points);
    }

    /** How many slots are set otherwise than in another plan. */
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

    /** What this plan tells of a row and another does not; first what asks for a look. */
    Optional<Message> told(HuntPlan other, String sheet, int row) {
        return fresh(other)
                .filter(message -> message.cells().stream().anyMatch(cell -> isIn(cell, sheet, row)))
                .min((one, two) -> one.severity().compareTo(two.severity()));
    }

    /** A warning of another place that the change brings. */
    Optional<Message> toldElsewhere(HuntPlan other) {
        return fresh(other)
                .filter(message -> message.severity().compareTo(Message.Severity.WARNING) <= 0)
                .findFirst();
    }

    private Stream<Message> fresh(HuntPlan other) {
        List<String> before = other.messages.stream().map(Message::text).toList();
        return messages.stream().filter(message -> !before.contains(message.text()));
    }

    private static boolean isIn(String cell, String sheet, int row) {
        return cell.startsWith(sheet + "!") && cell.matches(".*[A-Z]" + row + "|.* [A-Z]+" + row);
    }
}
