package org.bagwright.search.score;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.option.WantedRange;
import org.bagwright.search.exact.ExactBag;
import org.bagwright.search.exact.ExactOption;
import org.bagwright.search.exact.ExactProblem;

/** The least cost of a small problem by looking at every choice, each summed plainly. */
public final class ExactEnumeration {
    private final ExactProblem problem;
    private final int slots;
    private Cost best;
    private int fewestChanges;
    private Cost cheapest;

    private ExactEnumeration(ExactProblem problem) {
        this.problem = problem;
        slots = problem.bags().stream().mapToInt(bag -> bag.slots().size()).sum();
    }

    public static Cost best(ExactProblem problem) {
        return run(problem).best;
    }

    public static int fewestChanges(ExactProblem problem) {
        return run(problem).fewestChanges;
    }

    /** The least penalty of all choices as little beyond the limits as can be, whatever they break, micropoints. */
    public static long leastMicropoints(ExactProblem problem) {
        return run(problem).cheapest.micropoints();
    }

    private static ExactEnumeration run(ExactProblem problem) {
        ExactEnumeration all = new ExactEnumeration(problem);
        all.visit(new ArrayList<>());
        return all;
    }

    private void visit(List<ExactOption> chosen) {
        if (chosen.size() == slots) {
            Cost cost = cost(problem, chosen);
            int changes = chosen.stream().mapToInt(ExactOption::changes).sum();
            int order = best == null ? -1 : cost.compareTo(best);
            if (order < 0 || (order == 0 && changes < fewestChanges)) {
                best = cost;
                fewestChanges = changes;
            }
            Cost unbroken = new Cost(cost.excess(), 0, cost.micropoints());
            cheapest = cheapest == null || unbroken.compareTo(cheapest) < 0 ? unbroken : cheapest;
            return;
        }
        for (ExactOption option : slot(chosen.size())) {
            chosen.add(option);
            visit(chosen);
            chosen.remove(chosen.size() - 1);
        }
    }

    private List<ExactOption> slot(int place) {
        int left = place;
        for (ExactBag bag : problem.bags()) {
            if (left < bag.slots().size()) {
                return bag.slots().get(left);
            }
            left -= bag.slots().size();
        }
        throw new IllegalArgumentException("no slot " + place);
    }

    /** What the options with these indexes cost. */
    public static Cost cost(List<List<Integer>> indexes, ExactProblem problem) {
        List<ExactOption> chosen = new ArrayList<>();
        for (int bag = 0; bag < indexes.size(); bag++) {
            for (int slot = 0; slot < indexes.get(bag).size(); slot++) {
                int index = indexes.get(bag).get(slot);
                problem.bags().get(bag).slots().get(slot).stream()
                        .filter(option -> option.index() == index)
                        .forEach(chosen::add);
            }
        }
        return cost(problem, chosen);
    }

    static Cost cost(ExactProblem problem, List<ExactOption> chosen) {
        long pieces = 0;
        long breaks = 0;
        long micropoints = 0;
        for (int item = 0; item < problem.available().size(); item++) {
            int used = 0;
            for (ExactOption option : chosen) {
                used += option.needs().takes().get(item);
            }
            pieces += Math.max(0, used - problem.available().get(item));
        }
        int from = 0;
        for (ExactBag bag : problem.bags()) {
            List<ExactOption> own = chosen.subList(from, from + bag.slots().size());
            from += own.size();
            int changes = 0;
            int clubs = 0;
            for (ExactOption option : own) {
                breaks += option.breaks();
                micropoints += option.micropoints();
                changes += option.changes();
                clubs += option.needs().carried() ? 1 : 0;
            }
            pieces += Math.max(0, changes - bag.mostChanges().orElse(changes)) + Math.max(0, clubs - 14);
            long[] gaps = gaps(bag.gapAim(), own);
            long[] spread = spread(bag.spreadAim(), own);
            breaks += gaps[0] + spread[0];
            micropoints += gaps[1] + spread[1];
        }
        return new Cost(pieces, breaks, micropoints);
    }

    private static long[] gaps(Aim aim, List<ExactOption> own) {
        long[] sum = new long[2];
        List<ExactOption.Flight> flights =
                own.stream().flatMap(option -> option.flight().stream()).toList();
        if (!flights.isEmpty()) {
            sum[0] += flights.get(0).first().breaks();
            sum[1] += flights.get(0).first().micropoints();
        }
        for (int at = 1; at < flights.size(); at++) {
            double wishM = flights.get(at - 1).wishM();
            double gapM = flights.get(at - 1).carryM() - flights.get(at).carryM();
            WantedRange limitsM = flights.get(at - 1).gapLimitsM();
            double beyondM = Math.max(limitsM.leastMeasureUnits() - gapM, gapM - limitsM.mostMeasureUnits());
            sum[0] += PenaltyRules.gapMustBreaks(aim, gapM, wishM) + PenaltyRules.carryBreaks(gapM);
            sum[0] += Math.max(0, (long) Math.ceil(beyondM / aim.toleranceMeasureUnits() * 1000 - 1e-6));
            double varianceM2 =
                    flights.get(at - 1).doubt().gapVarianceM2(flights.get(at).doubt());
            sum[1] += PenaltyRules.gapMicropoints(aim, gapM, wishM, varianceM2);
        }
        return sum;
    }

    private static long[] spread(Aim aim, List<ExactOption> own) {
        long[] sum = new long[2];
        List<ExactOption.Match> matched =
                own.stream().flatMap(option -> option.match().stream()).toList();
        for (ExactOption.Match member : matched) {
            double total = 0;
            int count = 0;
            for (ExactOption.Match other : matched) {
                if (other.group() == member.group()) {
                    total += other.valueMeasureUnits();
                    count++;
                }
            }
            double apart = member.valueMeasureUnits() - total / count;
            sum[0] += PenaltyRules.breaks(aim.hardBreakThousandths(apart));
            sum[1] += PenaltyRules.micropoints(aim.penaltyPoints(apart));
        }
        return sum;
    }
}
