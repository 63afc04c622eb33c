package org.bagwright.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.balance.BuildAdvice;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Matching;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.SpreadTerm;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.Swingweight;

/** Notes for the bench on planned clubs: what a bend does to the bounce, and what mass would match a club to its target. */
final class BuildMessages {
    private static final double WORTH_SAYING_POINTS = 0.3;
    private static final double WORTH_SAYING_KG_CM2 = 10;
    private static final double SAME_DEG = 1e-6;
    private static final double LEAST_SHAFT_MASS_KG = 0.002;
    private static final double SHAFT_MASS_STEP_KG = 0.002;
    private static final double MOST_SHAFT_MASS_KG = 0.02;

    private final Matching matching;
    private final LengthUnit length;
    private final boolean spreadCounts;
    private final List<Message> messages = new ArrayList<>();

    private BuildMessages(BookResult result) {
        this.matching = result.book().settings().matching();
        this.length = result.book().settings().units().length();
        this.spreadCounts = result.bags().stream()
                .map(bag -> bag.options().spreadAim())
                .anyMatch(aim -> aim.must() || aim.importancePoints() > 0);
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
            if (!planned.get(index).isEmpty()) {
                Option option = planned.get(index);
                target(option.club(), option.build());
                bag.planned().spreadAt(index).ifPresent(spread -> group(option.club(), option.build(), spread));
            }
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

    private void target(Club club, BuildNumbers build) {
        club.targets()
                .swingweight()
                .filter(target -> worthSaying(build.swingweight().scalePoints() - target.scalePoints()))
                .ifPresent(target -> messages.add(Message.note(
                        club.cell(),
                        ofClub(
                                "Swingweight off its target: ",
                                club,
                                build.swingweight().text() + ", wanted " + target.text() + ": "
                                        + advice(BuildAdvice.forSwingweight(build, target))))));
    }

    private static boolean worthSaying(double offPoints) {
        return Math.abs(offPoints) >= WORTH_SAYING_POINTS;
    }

    private void group(Club club, BuildNumbers build, SpreadTerm spread) {
        if (!spreadCounts || club.targets().swingweight().isPresent()) {
            return;
        }
        boolean bySwingweight = matching.by() == Matching.By.SWINGWEIGHT;
        double off = spread.deviationMeasureUnits();
        if (Math.abs(off) < (bySwingweight ? WORTH_SAYING_POINTS : WORTH_SAYING_KG_CM2)) {
            return;
        }
        BuildAdvice advice = bySwingweight
                ? BuildAdvice.forSwingweight(
                        build, new Swingweight(build.swingweight().scalePoints() - off))
                : BuildAdvice.forClubInertia(build, build.clubInertiaKgCm2() - off);
        String figure =
                bySwingweight ? build.swingweight().text() : Numbers.fixed(build.clubInertiaKgCm2(), 0) + " kg cm2";
        messages.add(Message.note(
                club.cell(),
                ofClub(
                        "Off the mean of its group: ",
                        club,
                        figure + ", " + Numbers.signed(off, bySwingweight ? 1 : 0) + " from the mean (" + spread.group()
                                + "): " + advice(advice))));
    }

    private static Wording ofClub(String lead, Club club, String detail) {
        return Wording.ofClub(lead, club.golfer(), club.name(), detail, "");
    }

    private String advice(BuildAdvice advice) {
        OptionalDouble headKg = advice.atHeadKg();
        if (headKg.isEmpty()) {
            return "no mass at the head would match it";
        }
        String head = headKg.getAsDouble() > 0
                ? grams(headKg.getAsDouble()) + " g more at the head would match it"
                : grams(-headKg.getAsDouble()) + " g less at the head would match it";
        return head + onShaft(advice).map(text -> ", or " + text).orElse("");
    }

    /** The least of some usual masses that does the same from a place on the shaft. */
    private Optional<String> onShaft(BuildAdvice advice) {
        for (double massKg = LEAST_SHAFT_MASS_KG; massKg <= MOST_SHAFT_MASS_KG; massKg += SHAFT_MASS_STEP_KG) {
            OptionalDouble placeM = advice.placeOnShaftM(massKg);
            if (placeM.isPresent()) {
                return Optional.of(grams(massKg) + " g on the shaft "
                        + Numbers.fixed(length.fromM(placeM.getAsDouble()), length == LengthUnit.INCH ? 1 : 0) + " "
                        + length.label() + " from the butt end");
            }
        }
        return Optional.empty();
    }

    private static String grams(double massKg) {
        return Numbers.fixed(massKg * 1000, 1);
    }
}
