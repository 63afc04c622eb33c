package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.Broken;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;

/** A plan as a terminal shows it: how good, the ladder, what to change. */
public final class PlanText {
    private static final int PICTURE_CHARS = 44;
    /** Less than this is shown as 0.0. */
    private static final double LEAST_SHORT = 0.05;

    private final BookResult result;
    private final LengthUnit distance;

    public PlanText(BookResult result) {
        this.result = result;
        this.distance = result.book().settings().units().distance();
    }

    /** How good a plan of a whole book is, in a line. */
    public static String summary(BookResult result) {
        Set<String> broken = result.plannedBroken();
        return "penalty " + Numbers.fixed(result.plannedPoints(), 2) + " points planned, "
                + Numbers.fixed(result.todayPoints(), 2) + " today" + new PlanText(result).proof()
                + (broken.isEmpty() ? "" : ", not every must is met (" + String.join(", ", broken) + ")");
    }

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (BagResult bag : result.bags()) {
            lines.add(headline(bag));
            lines.addAll(broken(bag));
            reach(bag).ifPresent(lines::add);
            lines.add("");
            lines.addAll(ladder(bag));
            lines.add("");
            lines.addAll(changes(bag));
            lines.addAll(new ExplanationText(bag).lines());
            lines.addAll(new OutlookText(distance).lines(bag));
            lines.add("");
        }
        if (result.bags().size() > 1) {
            lines.add("All together: penalty " + Numbers.fixed(result.plannedPoints(), 2) + " points planned, "
                    + Numbers.fixed(result.todayPoints(), 2) + " today" + proof());
            lines.add("");
        }
        return lines;
    }

    private String headline(BagResult bag) {
        return bag.golfer().name() + ": penalty "
                + Numbers.fixed(bag.planned().score().penaltyPoints(), 2) + " points planned, "
                + Numbers.fixed(bag.today().score().penaltyPoints(), 2) + " today"
                + (result.bags().size() == 1 ? proof() : "");
    }

    /** What the plan breaks, and what limits today's bag breaks. */
    private List<String> broken(BagResult bag) {
        List<String> lines = new ArrayList<>();
        bag.broken(bag.planned(), result.book().settings()).stream()
                .map(rule -> "Not kept: " + rule.inWords())
                .forEach(lines::add);
        String today = bag.broken(bag.today(), result.book().settings()).stream()
                .filter(rule -> rule.kind() == Broken.Kind.LIMIT)
                .map(Broken::inWords)
                .collect(Collectors.joining("; "));
        if (!today.isEmpty()) {
            lines.add("Today's bag: " + today);
        }
        return lines;
    }

    /** What it costs that the longest club flies less far than today's; empty if it does not. */
    private Optional<String> reach(BagResult bag) {
        return bag.planned()
                .reach()
                .filter(reach -> distance.fromM(reach.shortM()) >= LEAST_SHORT)
                .map(reach -> "The longest club carries " + shown(reach.shortM()) + " " + distance.label()
                        + " less than today, which costs "
                        + Numbers.fixed(reach.terms().points(Measure.REACH), 2) + " points.");
    }

    /** How good all bags together are. */
    private String proof() {
        if (result.proven()) {
            return " (proven best)";
        }
        double above = result.plannedPoints() - result.boundPoints();
        return " (at most " + Numbers.fixed(above, 2) + " above the best possible)";
    }

    private List<String> ladder(BagResult bag) {
        List<Integer> carrying = carrying(bag);
        Scale scale = new Scale(bag, carrying);
        List<String> lines = new ArrayList<>();
        String unit = distance.label();
        lines.add(String.format(
                "  %-16s %7s %7s   %6s %6s %6s", "carry and gap, " + unit, "today", "plan", "gap", "plan", "wish"));
        for (int index : carrying) {
            lines.add(rung(bag, index, scale));
        }
        lines.add("  picture: o today, # planned, @ both");
        return lines;
    }

    /** The slots that carry today or as planned. */
    private static List<Integer> carrying(BagResult bag) {
        return IntStream.range(0, bag.options().slots().size())
                .filter(index -> carryM(bag, bag.today(), index).isPresent()
                        || carryM(bag, bag.planned(), index).isPresent())
                .boxed()
                .toList();
    }

    private String rung(BagResult bag, int index, Scale scale) {
        OptionalDouble todayM = carryM(bag, bag.today(), index);
        OptionalDouble plannedM = carryM(bag, bag.planned(), index);
        String gaps = String.format(
                "%6s %6s %6s",
                gap(bag.today(), index, GapTerm::gapM),
                gap(bag.planned(), index, GapTerm::gapM),
                gap(bag.planned(), index, GapTerm::wishM));
        return String.format(
                        "  %-16s %7s %7s   %s  %s",
                        shortened(name(bag, index), 16),
                        shown(todayM),
                        shown(plannedM),
                        gaps,
                        scale.picture(todayM, plannedM))
                .stripTrailing();
    }

    private static String name(BagResult bag, int index) {
        Option planned = bag.optionsOf(bag.planned()).get(index);
        return planned.isEmpty() ? bag.optionsOf(bag.today()).get(index).clubText() : planned.clubText();
    }

    private String gap(BagState state, int index, ToDoubleFunction<GapTerm> value) {
        return state.gapAfter(index)
                .map(term -> shown(value.applyAsDouble(term)))
                .orElse("");
    }

    private static OptionalDouble carryM(BagResult bag, BagState state, int index) {
        return bag.optionsOf(state).get(index).carryM();
    }

    private String shown(OptionalDouble valueM) {
        return valueM.isPresent() ? shown(valueM.getAsDouble()) : "-";
    }

    private String shown(double valueM) {
        return Numbers.fixed(distance.fromM(valueM), 1);
    }

    private static String shortened(String text, int chars) {
        return text.length() <= chars ? text : text.substring(0, chars - 1) + "~";
    }

    private List<String> changes(BagResult bag) {
        List<String> lines = new ArrayList<>();
        int items = 0;
        List<Option> today = bag.optionsOf(bag.today());
        List<Option> planned = bag.optionsOf(bag.planned());
        for (int index = 0; index < planned.size(); index++) {
            if (planned.get(index).changes() > 0) {
                items += planned.get(index).changes();
                lines.add("  " + change(new OptionChange(today.get(index), planned.get(index))));
            }
        }
        String count = lines.isEmpty()
                ? "Nothing to change: today's bag is the plan."
                : "Change " + lines.size() + (lines.size() == 1 ? " club (" : " clubs (") + items
                        + (items == 1 ? " item):" : " items):");
        lines.add(0, count);
        return lines;
    }

    private static String change(OptionChange change) {
        String club = (change.to().isEmpty() ? change.from() : change.to()).clubText();
        String text = String.format("%-16s %s", shortened(club, 16), String.join(", ", change.items()));
        return change.to().isEmpty() ? text : text + reading(change.to());
    }

    private static String reading(Option planned) {
        String text = "  (gauge: loft " + Numbers.fixed(planned.pose().gaugeLoftDeg(), 1) + ", lie "
                + Numbers.fixed(planned.pose().gaugeLieDeg(), 1);
        return text + (sleeved(planned.club()) ? "; sits " + sits(planned.pose().sitsClosedDeg()) + ")" : ")");
    }

    private static boolean sleeved(Club club) {
        return club.sleeve().isPresent();
    }

    private static String sits(double closedDeg) {
        String size = Numbers.fixed(Math.abs(closedDeg), 1);
        if (size.equals("0.0")) {
            return "square";
        }
        return size + (closedDeg > 0 ? " closed" : " open");
    }

    /** Places carries along a line of characters, the longest at the right. */
    private static final class Scale {
        private final double leastM;
        private final double mostM;

        Scale(BagResult bag, List<Integer> carrying) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int index : carrying) {
                for (BagState state : List.of(bag.today(), bag.planned())) {
                    OptionalDouble carryM = carryM(bag, state, index);
                    least = Math.min(least, carryM.orElse(least));
                    most = Math.max(most, carryM.orElse(most));
                }
            }
            leastM = least;
            mostM = most;
        }

        String picture(OptionalDouble todayM, OptionalDouble plannedM) {
            char[] line = " ".repeat(PICTURE_CHARS).toCharArray();
            todayM.ifPresent(carryM -> line[place(carryM)] = 'o');
            plannedM.ifPresent(carryM -> line[place(carryM)] = line[place(carryM)] == 'o' ? '@' : '#');
            return new String(line);
        }

        private int place(double carryM) {
            double share = mostM > leastM ? (carryM - leastM) / (mostM - leastM) : 0;
            return (int) Math.round(share * (PICTURE_CHARS - 1));
        }
    }
}
