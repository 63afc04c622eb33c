package org.bagwright.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Matching;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BuildAdvice;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BalanceWish;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;

/** Notes for the bench on planned clubs: what a bend does to the bounce, and what mass would match a club to its target. */
final class BuildMessages {
    private static final double SAME_DEG = 1e-6;

    private final Matching matching;
    private final LengthUnit length;
    private final List<Message> messages = new ArrayList<>();

    private BuildMessages(BookResult result) {
        this.matching = result.book().settings().matching();
        this.length = result.book().settings().units().length();
    }

    static List<Message> of(BookResult result) {
        BuildMessages made = new BuildMessages(result);
        result.bags().forEach(made::bag);
        return made.messages;
    }

    private void bag(BagResult bag) {
        List<Option> planned = bag.optionsOf(bag.planned());
        bends(bag.golfer(), planned);
        for (int index = 0; index < planned.size(); index++) {
            BalanceWish.of(bag, index, matching).ifPresent(this::balance);
        }
    }

    private void bends(Golfer golfer, List<Option> planned) {
        List<String> bends = planned.stream()
                .filter(option -> !option.isEmpty())
                .flatMap(option -> bend(option.club(), option.choice().bend()).stream())
                .toList();
        if (!bends.isEmpty()) {
            messages.add(Message.note(
                    golfer.cell(),
                    Wording.ofGolfer(
                            "Bends to make; bounce follows the loft one for one (common practice): ",
                            golfer.name(),
                            String.join("; ", bends),
                            ". Bend only a head whose maker allows it, and no further than allowed")));
        }
    }

    private static Optional<String> bend(Club club, Bend planned) {
        double weakerDeg = planned.loftDeg() - club.today().bend().loftDeg();
        double uprightDeg = planned.lieDeg() - club.today().bend().lieDeg();
        List<String> parts = new ArrayList<>();
        if (Math.abs(weakerDeg) >= SAME_DEG) {
            parts.add(degrees(weakerDeg)
                    + (weakerDeg > 0 ? " weaker, bounce +" : " stronger, bounce -")
                    + degrees(weakerDeg));
        }
        if (Math.abs(uprightDeg) >= SAME_DEG) {
            parts.add(degrees(uprightDeg) + (uprightDeg > 0 ? " more upright" : " flatter"));
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(club.name() + " " + String.join(" and ", parts));
    }

    private static String degrees(double valueDeg) {
        String text = Numbers.trimmed(Math.abs(valueDeg), 2);
        return text + (text.equals("1") ? " degree" : " degrees");
    }

    private void balance(BalanceWish wish) {
        Club club = wish.club().club();
        String lead = club.targets().swingweight().isPresent()
                ? "Swingweight off its target: "
                : "Off the mean of its group: ";
        String detail = wish.figure() + ", " + wish.wish() + ": " + advice(wish.advice());
        messages.add(Message.note(club.cell(), Wording.ofClub(lead, club.golfer(), club.name(), detail, "")));
    }

    private String advice(BuildAdvice advice) {
        OptionalDouble headKg = advice.atHeadKg();
        if (headKg.isEmpty()) {
            return "no mass at the head would match it";
        }
        String head = Numbers.fixed(1000 * Math.abs(headKg.getAsDouble()), 1)
                + (headKg.getAsDouble() > 0 ? " g more" : " g less") + " at the head would match it";
        return head + advice.shaftWords(length).map(words -> ", or " + words).orElse("");
    }
}
