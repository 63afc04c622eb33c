package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.Broken;
import org.bagwright.domain.plan.GapOutlook;
import org.bagwright.domain.plan.MeasureNext;
import org.bagwright.domain.plan.Relaxation;
import org.bagwright.domain.plan.Verdict;
import org.bagwright.domain.text.ListText;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;

/** A plan as a terminal shows it: what decides first, then what to change, then the ladder. */
public final class PlanText {
    /** What fits on a screen above the line that names the result, and a few messages. */
    private static final int MOST_LINES = 35;

    private static final int MOST_BROKEN = 4;

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
        return new PlanText(result).summary();
    }

    /** Everything about each golfer; for several golfers a few lines each where all would not fit on a screen. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (result.bags().size() > 1) {
            lines.addAll(new WrappedText("All " + result.bags().size() + " golfers: " + summary(), 2).lines());
        }
        List<String> full = new ArrayList<>(lines);
        result.bags().forEach(bag -> full.addAll(full(bag)));
        if (result.bags().size() == 1 || full.size() <= MOST_LINES) {
            return full;
        }
        boolean roomForTwo = lines.size() + 2 * result.bags().size() <= MOST_LINES;
        result.bags().forEach(bag -> lines.addAll(inShort(bag, roomForTwo)));
        lines.addAll(wouldHelp());
        return lines;
    }

    /**
     * What to measure next, in a line; of several golfers of the one to whom it is worth most. Empty where nothing can be
     * measured.
     */
    public Optional<String> measureNext() {
        return result.bags().stream()
                .filter(bag -> next(bag).flatMap(MeasureNext::inWords).isPresent())
                .max(Comparator.comparingDouble(PlanText::worthPoints))
                .map(this::measureNext);
    }

    private String measureNext(BagResult bag) {
        String golfer = result.bags().size() == 1 ? "" : ", " + bag.golfer().name();
        String line = "Measure next" + golfer + ": "
                + next(bag).flatMap(MeasureNext::inWords).orElseThrow();
        return new WrappedText(line, 2).lines(1).get(0);
    }

    private static Optional<MeasureNext> next(BagResult bag) {
        return bag.outlook().map(BagOutlook::next);
    }

    private static double worthPoints(BagResult bag) {
        return next(bag)
                .filter(next -> !next.enough())
                .flatMap(MeasureNext::first)
                .map(MeasureNext.Advice::worthPoints)
                .orElse(-1.0);
    }

    /** What holds the golfers back most, each restriction once. */
    private List<String> wouldHelp() {
        Map<Relaxation, BagResult> bags = new LinkedHashMap<>();
        result.bags().forEach(bag -> bag.relaxations().forEach(relaxation -> bags.putIfAbsent(relaxation, bag)));
        return bags.keySet().stream()
                .sorted(Comparator.comparingLong(Relaxation::fewerBreaks)
                        .thenComparingDouble(Relaxation::gainPoints)
                        .reversed())
                .limit(ExplanationText.MOST_RELAXATIONS)
                .map(most -> "Would help " + bags.get(most).golfer().name() + ": " + ExplanationText.inWords(most))
                .flatMap(line -> new WrappedText(line, 2).lines(1).stream())
                .toList();
    }

    private String summary() {
        return verdict(result.plannedBroken()) + "; penalty " + Numbers.fixed(result.todayPoints(), 2) + " today -> "
                + Numbers.fixed(result.plannedPoints(), 2) + " planned" + proof();
    }

    private String verdict(Set<String> broken) {
        return broken.isEmpty()
                ? Verdict.MET.inWords()
                : "NOT MET: " + ListText.allOf(broken) + " (" + result.verdict().inShort() + ")";
    }

    /** What the plan breaks. */
    private List<String> broken(BagResult bag) {
        List<Broken> broken = bag.broken(bag.planned(), result.book().settings());
        List<String> lines = new ArrayList<>();
        broken.stream()
                .limit(MOST_BROKEN)
                .map(rule -> "Not kept: " + rule.inWords())
                .forEach(lines::add);
        if (broken.size() > MOST_BROKEN) {
            lines.add("Not kept: " + (broken.size() - MOST_BROKEN) + " more, see the sheet Messages");
        }
        return lines;
    }

    private Optional<String> brokenToday(BagResult bag) {
        String today = bag.broken(bag.today(), result.book().settings()).stream()
                .filter(rule -> rule.kind() == Broken.Kind.LIMIT)
                .map(Broken::inWords)
                .collect(Collectors.joining("; "));
        return today.isEmpty() ? Optional.empty() : Optional.of("Today's bag: " + today);
    }

    /** What of the penalty the plan misses and what is not known, which shots lower and turns do not; empty without doubt. */
    private static Optional<String> parts(BagResult bag) {
        double doubtPoints = bag.terms(bag.planned()).doubtPoints();
        double missPoints = bag.planned().score().penaltyPoints() - doubtPoints;
        return doubtPoints == 0
                ? Optional.empty()
                : Optional.of("Of the planned penalty " + Numbers.fixed(missPoints, 2) + " is miss and "
                        + Numbers.fixed(doubtPoints, 2) + " doubt: what is not known of the carries.");
    }

    /** What it costs that the longest club flies less far than today's; empty if it does not. */
    private Optional<String> reach(BagResult bag) {
        return bag.planned()
                .reach()
                .filter(reach -> distance.fromM(reach.shortM()) >= LEAST_SHORT)
                .map(reach -> "The longest club carries " + Numbers.fixed(distance.fromM(reach.shortM()), 1) + " "
                        + distance.label()
                        + " less than today, which costs "
                        + Numbers.fixed(reach.terms().points(Measure.REACH), 2) + " points.");
    }

    /** How good all bags together are. */
    private String proof() {
        if (result.proven()) {
            return " (proven best)";
        }
        double above = result.plannedPoints() - result.boundPoints();
        return " (at most " + Numbers.fixed(above, 2) + " above the best possible" + breaksBound() + ")";
    }

    /** How far musts and limits are missed, and what no plan misses them by less than. */
    private String breaksBound() {
        return result.plannedBreaks() == 0
                ? ""
                : "; missed by " + tolerances(result.plannedBreaks()) + " tolerances in all, no plan by less than "
                        + tolerances(result.proof().bounds().mustThousandths());
    }

    private static String tolerances(long thousandths) {
        return Numbers.fixed(thousandths / 1000.0, 2);
    }

    /** With as many restrictions as the screen has room for; where it has none, without what today's bag breaks, too. */
    private List<String> full(BagResult bag) {
        int relaxations = ExplanationText.MOST_RELAXATIONS;
        List<String> lines = full(bag, relaxations, true);
        while (lines.size() > MOST_LINES && relaxations > 0) {
            lines = full(bag, --relaxations, true);
        }
        return lines.size() > MOST_LINES ? full(bag, 0, false) : lines;
    }

    private List<String> full(BagResult bag, int relaxations, boolean withToday) {
        List<String> lines = new ArrayList<>();
        lines.add(bag.golfer().name() + ": " + verdict(bag.broken(bag.planned())) + "; penalty "
                + Numbers.fixed(bag.today().score().penaltyPoints(), 2) + " today -> "
                + Numbers.fixed(bag.planned().score().penaltyPoints(), 2) + " planned"
                + (result.bags().size() == 1 ? proof() : ""));
        parts(bag).ifPresent(lines::add);
        lines.addAll(broken(bag));
        if (withToday) {
            brokenToday(bag).ifPresent(lines::add);
        }
        reach(bag).ifPresent(lines::add);
        lines.addAll(new WorkText(bag).lines());
        lines.addAll(new LadderText(bag, distance).lines());
        lines.addAll(new ExplanationText(bag).lines(relaxations, withToday));
        lines.addAll(new OutlookText(distance).lines(bag));
        return lines.stream()
                .flatMap(line -> new WrappedText(line, 2).lines().stream())
                .toList();
    }

    /** One golfer of many. */
    private List<String> inShort(BagResult bag, boolean withLadder) {
        Set<String> broken = bag.broken(bag.planned());
        String first = bag.golfer().name() + ": " + (broken.isEmpty() ? "musts met" : verdict(broken)) + "; penalty "
                + Numbers.fixed(bag.today().score().penaltyPoints(), 2) + " -> "
                + Numbers.fixed(bag.planned().score().penaltyPoints(), 2) + "; " + toChange(bag);
        List<String> lines = new ArrayList<>(new WrappedText(first, 2).lines(1));
        if (withLadder) {
            String ladder = "  carry " + new LadderText(bag, distance).inShort() + leastSure(bag);
            lines.addAll(new WrappedText(ladder, 2).lines(1));
        }
        return lines;
    }

    private static String toChange(BagResult bag) {
        int clubs = new WorkText(bag).clubs();
        String first = new ExplanationText(bag)
                .firstChange()
                .map(change -> ", first " + change)
                .orElse("");
        return clubs == 0 ? "nothing to change" : "change " + clubs + (clubs == 1 ? " club" : " clubs") + first;
    }

    private static String leastSure(BagResult bag) {
        return bag.outlook()
                .flatMap(outlook -> outlook.leastSureGap())
                .map(gap -> "; least certain gap " + percent(gap) + " % after "
                        + bag.optionsOf(bag.planned()).get(gap.fromIndex()).clubText())
                .orElse("");
    }

    private static String percent(GapOutlook gap) {
        return Numbers.fixed(100 * gap.chanceRatio(), 0);
    }
}
