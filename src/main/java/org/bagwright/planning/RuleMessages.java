package org.bagwright.planning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.StockItem;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.planning.options.EquipmentRules;

/** The rules to check with the governing body, for every option that is offered, planned or not. */
final class RuleMessages {
    private static final String CHECK = ": check with the governing body";

    private final EquipmentRules rules;
    private final List<Message> messages = new ArrayList<>();

    private RuleMessages(EquipmentRules rules) {
        this.rules = rules;
    }

    static List<Message> of(BookResult result) {
        RuleMessages made =
                new RuleMessages(new EquipmentRules(result.book().settings().lengthLimitM()));
        result.bags().forEach(made::bag);
        made.adjustableParts(result);
        return made.messages;
    }

    private void bag(BagResult bag) {
        long carried = bag.optionsOf(bag.planned()).stream()
                .filter(option -> !option.isEmpty())
                .count();
        if (carried > BagOptions.MOST_CLUBS) {
            messages.add(Message.check(
                    bag.golfer().cell(),
                    bag.golfer().name() + " has " + carried + " clubs; rule 4.1b allows 14 in a round" + CHECK));
        }
        for (SlotOptions slot : bag.options().slots()) {
            slot.clubs().forEach(club -> club(club, slot.optionsOf(club)));
        }
    }

    /** One message for each figure that some option has over its limit, at its first option. */
    private void club(Club club, List<Option> options) {
        Map<String, List<Option>> found = new LinkedHashMap<>();
        for (Option option : options) {
            for (String check : rules.checks(option.setup().orElseThrow())) {
                found.computeIfAbsent(check, text -> new ArrayList<>()).add(option);
            }
        }
        found.forEach((check, over) -> messages.add(
                Message.check(club.cell(), club.name() + where(over, options.size()) + " has a " + check + CHECK)));
    }

    private static String where(List<Option> over, int all) {
        return over.size() == all
                ? ""
                : " in setting " + over.get(0).choice().settingText()
                        + over.get(0)
                                .choice()
                                .weighting()
                                .map(name -> ", weighting " + name)
                                .orElse("")
                        + (over.size() > 1 ? " and " + (over.size() - 1) + " more ways" : "");
    }

    private void adjustableParts(BookResult result) {
        List<String> parts = new ArrayList<>();
        result.bags().stream()
                .map(BagResult::options)
                .map(BagOptions::slots)
                .flatMap(List::stream)
                .flatMap(slot -> slot.clubs().stream())
                .forEach(club -> {
                    club.sleeve().ifPresent(name -> parts.add(StockItem.titled("sleeve", name)));
                    club.kit().ifPresent(name -> parts.add(StockItem.titled("kit", name)));
                });
        if (!parts.isEmpty()) {
            messages.add(Message.check(
                    "Clubs",
                    "Adjustable parts ("
                            + String.join(", ", parts.stream().distinct().toList())
                            + "): the rules require the governing body's evaluation, a tool to move them,"
                            + " and that nothing works loose. During a round no setting, weight or bend may be"
                            + " changed (rule 4.1a)" + CHECK));
        }
    }
}
