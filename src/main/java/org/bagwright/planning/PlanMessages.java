package org.bagwright.planning;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.Broken;
import org.bagwright.domain.plan.BrokenRule;
import org.bagwright.domain.plan.Verdict;

/** What a person should know about a finished plan: broken limits and musts, rules to check. */
final class PlanMessages {

    private final List<Message> messages = new ArrayList<>();
    private final BookSettings settings;
    private final Verdict verdict;

    PlanMessages(BookResult result) {
        this.settings = result.book().settings();
        this.verdict = result.verdict();
        for (int place = 0; place < result.bags().size(); place++) {
            today(result.bags().get(place));
            breaks(result.bags().get(place), result.proof().brokenIn(place));
        }
        stock(result);
        messages.addAll(BuildMessages.of(result));
        messages.addAll(RuleMessages.of(result));
    }

    List<Message> messages() {
        return messages;
    }

    /** What the plan breaks: where the score has found it, in the words of the bag. */
    private void breaks(BagResult bag, List<BrokenRule> found) {
        if (found.isEmpty()) {
            return;
        }
        Golfer golfer = bag.golfer();
        String names = String.join(", ", bag.broken(bag.planned()));
        messages.add(Message.warning(
                golfer.cell(),
                golfer.name() + ": " + verdict.inWords() + (names.isEmpty() ? "" : " (" + names + ")")
                        + "; the plan misses by the least "
                        + (verdict == Verdict.IMPOSSIBLE ? "there is" : "that was found")));
        List<Broken> inWords = bag.broken(bag.planned(), settings);
        Set<Broken> told = new LinkedHashSet<>();
        for (BrokenRule rule : found) {
            List<Broken> there = inWords.stream()
                    .filter(broken -> rule.isAt(broken.place().index()))
                    .toList();
            if (there.isEmpty()) {
                messages.add(Message.warning(golfer.cell(), golfer.name() + ": the plan breaks " + rule.rule()));
            }
            told.addAll(there);
        }
        told.forEach(rule -> messages.add(Message.warning(rule.cell(), rule.words())));
    }

    /** One message where today's bag breaks limits of its golfer. */
    private void today(BagResult bag) {
        List<Broken> limits = bag.broken(bag.today(), settings).stream()
                .filter(rule -> rule.kind() == Broken.Kind.LIMIT)
                .toList();
        if (!limits.isEmpty()) {
            String all = limits.stream().map(Broken::words).collect(Collectors.joining("; "));
            messages.add(Message.note(
                    limits.get(0).cell(),
                    Wording.ofGolfer(
                            "Today's bag does not keep these limits: ",
                            bag.golfer().name(),
                            all,
                            "")));
        }
    }

    private void stock(BookResult result) {
        for (int item = 0; item < result.stock().size(); item++) {
            StockLimit limit = result.stock().get(item);
            int taken = result.taken(item, BagResult::planned);
            if (taken > limit.available()) {
                messages.add(Message.warning(
                        limit.item().cell(),
                        "the plan uses " + taken + " of " + limit.item().inWords() + ", but there are only "
                                + limit.available()
                                + (verdict == Verdict.IMPOSSIBLE ? ": no allowed choice uses fewer" : "")));
            }
        }
    }
}
