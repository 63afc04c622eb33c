package org.bagwright.cli;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.BagResult;
import org.bagwright.domain.BookResult;
import org.bagwright.domain.Choice;
import org.bagwright.domain.Club;
import org.bagwright.domain.ClubOptions;
import org.bagwright.domain.DistanceUnit;
import org.bagwright.domain.Numbers;
import org.bagwright.domain.Option;

/** A plan as a terminal shows it: how good, the ladder, what to change. */
final class PlanText {
    private static final int PICTURE_CHARS = 44;

    private final BookResult result;
    private final DistanceUnit distance;

    PlanText(BookResult result) {
        this.result = result;
        this.distance = result.book().settings().units().distance();
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (BagResult bag : result.bags()) {
            lines.add(headline(bag));
            lines.add("");
            lines.addAll(ladder(bag));
            lines.add("");
            lines.addAll(changes(bag));
            lines.addAll(new OutlookText(distance).lines(bag));
            lines.add("");
        }
        return lines;
    }

    private String headline(BagResult bag) {
        String text = bag.golfer().name() + ": penalty "
                + Numbers.fixed(bag.planned().score().penaltyPoints(), 2) + " points planned, "
                + Numbers.fixed(bag.today().score().penaltyPoints(), 2) + " today";
        if (bag.proven()) {
            return text + " (proven best)";
        }
        double above = bag.planned().score().penaltyPoints() - bag.boundPoints();
        return text + " (at most " + Numbers.fixed(above, 2) + " above the best possible)";
    }

    private List<String> ladder(BagResult bag) {
        List<Integer> carrying = bag.options().carryingIndexes();
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

    private String rung(BagResult bag, int index, Scale scale) {
        double todayM = carryM(bag, bag.today().chosen(), index);
        double plannedM = carryM(bag, bag.planned().chosen(), index);
        String gaps = bag.today()
                .gapAfter(index)
                .map(gap -> String.format(
                        "%6s %6s %6s",
                        shown(gap.gapM()),
                        shown(bag.planned().gapAfter(index).orElseThrow().gapM()),
                        shown(gap.wishM())))
                .orElse(" ".repeat(20));
        String name = bag.options().clubs().get(index).club().name();
        return String.format(
                        "  %-16s %7s %7s   %s  %s",
                        shortened(name, 16), shown(todayM), shown(plannedM), gaps, scale.picture(todayM, plannedM))
                .stripTrailing();
    }

    private static double carryM(BagResult bag, List<Integer> chosen, int index) {
        return bag.options()
                .clubs()
                .get(index)
                .options()
                .get(chosen.get(index))
                .carryM()
                .orElseThrow();
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
        for (int index = 0; index < bag.options().clubs().size(); index++) {
            ClubOptions club = bag.options().clubs().get(index);
            Option planned = club.options().get(bag.planned().chosen().get(index));
            if (planned.changes() > 0) {
                items += planned.changes();
                lines.add("  " + change(club, planned));
            }
        }
        String count = lines.isEmpty()
                ? "Nothing to change: today's bag is the plan."
                : "Change " + lines.size() + (lines.size() == 1 ? " club (" : " clubs (") + items
                        + (items == 1 ? " item):" : " items):");
        lines.add(0, count);
        return lines;
    }

    private static String change(ClubOptions club, Option planned) {
        Choice from = club.today().choice();
        Choice to = planned.choice();
        List<String> parts = new ArrayList<>();
        if (!from.setting().equals(to.setting())) {
            parts.add("setting " + from.settingText() + " -> " + to.settingText());
        }
        addBend(parts, "loft bend", from.bend().loftDeg(), to.bend().loftDeg());
        addBend(parts, "lie bend", from.bend().lieDeg(), to.bend().lieDeg());
        return String.format("%-16s %s", shortened(club.club().name(), 16), String.join(", ", parts))
                + reading(club, planned);
    }

    private static void addBend(List<String> parts, String what, double fromDeg, double toDeg) {
        if (Math.abs(fromDeg - toDeg) > 1e-6) {
            parts.add(what + " " + Numbers.signed(fromDeg, 1) + " -> " + Numbers.signed(toDeg, 1));
        }
    }

    private static String reading(ClubOptions club, Option planned) {
        String text = "  (gauge: loft " + Numbers.fixed(planned.pose().gaugeLoftDeg(), 1) + ", lie "
                + Numbers.fixed(planned.pose().gaugeLieDeg(), 1);
        return text + (sleeved(club.club()) ? "; sits " + sits(planned.pose().sitsClosedDeg()) + ")" : ")");
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
                for (List<Integer> chosen :
                        List.of(bag.today().chosen(), bag.planned().chosen())) {
                    least = Math.min(least, carryM(bag, chosen, index));
                    most = Math.max(most, carryM(bag, chosen, index));
                }
            }
            leastM = least;
            mostM = most;
        }

        String picture(double todayM, double plannedM) {
            char[] line = " ".repeat(PICTURE_CHARS).toCharArray();
            int today = place(todayM);
            int planned = place(plannedM);
            line[today] = 'o';
            line[planned] = today == planned ? '@' : '#';
            return new String(line);
        }

        private int place(double carryM) {
            double share = mostM > leastM ? (carryM - leastM) / (mostM - leastM) : 0;
            return (int) Math.round(share * (PICTURE_CHARS - 1));
        }
    }
}
