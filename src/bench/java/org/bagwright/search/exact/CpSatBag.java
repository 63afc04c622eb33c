package org.bagwright.search.exact;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.LongSummaryStatistics;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import org.bagwright.search.score.PenaltyRules;

/**
 * One bag in the model of a general constraint solver: a yes or no for each option, exactly one yes in each slot.
 *
 * <p>Lengths and matched numbers are whole multiples of a unit of each bag, chosen so that one squared unit off costs one
 * unit of the objective; squares are then exact products of whole numbers and the only loss is that rounding.
 */
public final class CpSatBag {
    private static final double MICROPOINTS_PER_POINT = 1e6;
    private static final long THOUSAND = 1000;

    public final ExactBag bag;
    public final List<List<BoolVar>> taken = new ArrayList<>();
    final LinearExprBuilder penalty;
    final LinearExprBuilder breaks;

    /** How many squares, and how many other terms that are rounded, are in the penalty. */
    public int squares;

    public int roundings;

    private final CpModel model;
    private final double gapUnitM;
    private final double matchUnit;

    /**
     * @param unitMicropoints the unit of the objective
     * @param penalty to which the penalty is added, in units of the objective
     * @param breaks to which the broken musts are added, thousandths
     */
    public CpSatBag(
            CpModel model, ExactBag bag, double unitMicropoints, LinearExprBuilder penalty, LinearExprBuilder breaks) {
        this.model = model;
        this.bag = bag;
        this.penalty = penalty;
        this.breaks = breaks;
        gapUnitM = unit(bag.gapAim().toleranceMeasureUnits(), bag.gapAim().importancePoints(), unitMicropoints);
        matchUnit =
                unit(bag.spreadAim().toleranceMeasureUnits(), bag.spreadAim().importancePoints(), unitMicropoints);
        options(unitMicropoints);
        limits();
        for (int from = 0; from < taken.size(); from++) {
            gapsFrom(from);
        }
        bag.slots().stream()
                .flatMap(List::stream)
                .map(ExactOption::group)
                .filter(group -> group >= 0)
                .distinct()
                .forEach(this::spread);
    }

    /** The deviation that costs one unit of the objective. */
    private static double unit(double tolerance, double importancePoints, double unitMicropoints) {
        double points = importancePoints > 0 ? importancePoints : 1;
        return tolerance * Math.sqrt(unitMicropoints / (points * MICROPOINTS_PER_POINT));
    }

    private void options(double unitMicropoints) {
        for (List<ExactOption> slot : bag.slots()) {
            List<BoolVar> yes = new ArrayList<>();
            for (ExactOption option : slot) {
                BoolVar one = model.newBoolVar("");
                yes.add(one);
                penalty.addTerm(one, Math.round(option.micropoints() / unitMicropoints));
                breaks.addTerm(one, option.breaks());
            }
            model.addExactlyOne(yes.toArray(Literal[]::new));
            taken.add(yes);
            roundings++;
        }
    }

    private void limits() {
        bag.mostChanges().ifPresent(most -> model.addLessOrEqual(sum(ExactOption::changes), most));
        model.addLessOrEqual(sum(option -> option.needs().carried() ? 1 : 0), PenaltyRules.MOST_CLUBS);
    }

    /** The sum over the options taken of all slots. */
    public LinearExprBuilder sum(ToLongFunction<ExactOption> number) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int slot = 0; slot < taken.size(); slot++) {
            add(sum, slot, number, 1);
        }
        return sum;
    }

    private LinearExprBuilder sum(int slot, ToLongFunction<ExactOption> number) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        add(sum, slot, number, 1);
        return sum;
    }

    private void add(LinearExprBuilder sum, int slot, ToLongFunction<ExactOption> number, long times) {
        for (int option = 0; option < taken.get(slot).size(); option++) {
            long value = number.applyAsLong(bag.slots().get(slot).get(option));
            if (value != 0) {
                sum.addTerm(taken.get(slot).get(option), times * value);
            }
        }
    }

    // Gaps: from each slot to every later one that can hold the next club that flies.

    private void gapsFrom(int from) {
        if (never(from)) {
            return;
        }
        for (int to = from + 1; to < taken.size(); to++) {
            if (!never(to)) {
                gap(from, to);
                if (always(to)) {
                    return;
                }
            }
        }
    }

    private boolean never(int slot) {
        return all(slot, option -> !option.flies());
    }

    private boolean always(int slot) {
        return all(slot, ExactOption::flies);
    }

    private boolean all(int slot, Predicate<ExactOption> test) {
        return bag.slots().get(slot).stream().allMatch(test);
    }

    /** Yes if the clubs of two slots fly and none between them does; free to be yes if not, which only costs. */
    private Literal neighbours(int from, int to) {
        if (always(from) && always(to) && to == from + 1) {
            return model.trueLiteral();
        }
        BoolVar arc = model.newBoolVar("");
        LinearExprBuilder least = LinearExpr.newBuilder();
        add(least, from, option -> option.flies() ? 1 : 0, 1);
        add(least, to, option -> option.flies() ? 1 : 0, 1);
        for (int between = from + 1; between < to; between++) {
            add(least, between, option -> option.flies() ? 1 : 0, -1);
        }
        model.addLessOrEqual(least.add(-1), arc);
        return arc;
    }

    private void gap(int from, int to) {
        Literal arc = neighbours(from, to);
        long most = mostOff(from, to);
        IntVar off = model.newIntVar(-most, most, "");
        LinearExprBuilder wished = sum(from, flying(flight -> units(flight.carryM() - flight.wishM())));
        add(wished, to, flying(flight -> units(flight.carryM())), -1);
        model.addEquality(off, wished).onlyEnforceIf(arc);
        if (bag.gapAim().importancePoints() > 0) {
            penalty.add(square(off, most));
            squares++;
            roundings++;
        }
        if (bag.gapAim().must()) {
            long tolerance = units(bag.gapAim().toleranceMeasureUnits());
            breaks.add(beyond(LinearExpr.newBuilder().addTerm(off, 1), 1, tolerance, most, arc));
        }
        falling(from, to, arc);
    }

    private long units(double lengthM) {
        return Math.round(lengthM / gapUnitM);
    }

    /** The most by which any gap between clubs of two slots differs from its wish. */
    private long mostOff(int from, int to) {
        LongSummaryStatistics wished = flights(from)
                .mapToLong(flight -> units(flight.carryM() - flight.wishM()))
                .summaryStatistics();
        LongSummaryStatistics next =
                flights(to).mapToLong(flight -> units(flight.carryM())).summaryStatistics();
        return Math.max(Math.abs(wished.getMax() - next.getMin()), Math.abs(wished.getMin() - next.getMax()));
    }

    private Stream<ExactOption.Flight> flights(int slot) {
        return bag.slots().get(slot).stream().flatMap(option -> option.flight().stream());
    }

    /** A number of the options that fly; 0 for the others. */
    private static ToLongFunction<ExactOption> flying(ToLongFunction<ExactOption.Flight> number) {
        return option -> option.flight().stream().mapToLong(number).sum();
    }

    private IntVar square(IntVar number, long most) {
        IntVar square = model.newIntVar(0, most * most, "");
        model.addMultiplicationEquality(square, number, number);
        return square;
    }

    /** How far {@code scale} times a number is beyond its tolerance, in thousandths of it, if {@code only} is so. */
    private IntVar beyond(LinearExprBuilder number, long scale, long tolerance, long most, Literal... only) {
        IntVar beyond = model.newIntVar(0, THOUSAND * (most / Math.max(1, tolerance) + 1), "");
        LinearExprBuilder limit =
                LinearExpr.newBuilder().addTerm(beyond, scale * tolerance).add(scale * tolerance * THOUSAND);
        model.addLessOrEqual(LinearExpr.newBuilder().addTerm(number.build(), THOUSAND), limit)
                .onlyEnforceIf(only);
        model.addLessOrEqual(LinearExpr.newBuilder().addTerm(number.build(), -THOUSAND), limit)
                .onlyEnforceIf(only);
        return beyond;
    }

    /** A club that carries no further than the next breaks 1000 and one for each millimetre missing. */
    private void falling(int from, int to, Literal arc) {
        double mm = 1e-3;
        LinearExprBuilder micrometres = sum(from, flying(flight -> Math.round(flight.carryM() / mm * 1e3)));
        add(micrometres, to, flying(flight -> Math.round(flight.carryM() / mm * 1e3)), -1);
        LinearArgument gap = micrometres.build();
        BoolVar falls = model.newBoolVar("");
        model.addGreaterOrEqual(gap, 1).onlyEnforceIf(new Literal[] {arc, falls.not()});
        IntVar missing = model.newIntVar(0, 1_000_000, "");
        model.addGreaterOrEqual(LinearExpr.newBuilder().addTerm(missing, 1000).add(gap), 0)
                .onlyEnforceIf(new Literal[] {arc, falls});
        breaks.addTerm(falls, THOUSAND).add(missing);
    }

    // Spread: the squares about the mean of n clubs are the sum of the squares less the square of the sum over n.

    private void spread(int group) {
        ToLongFunction<ExactOption> member = option -> option.group() == group ? 1 : 0;
        ToLongFunction<ExactOption> value = option -> option.group() == group ? matched(option) : 0;
        long least = 0;
        long most = 0;
        long mostSum = 0;
        for (List<ExactOption> slot : bag.slots()) {
            least += slot.stream().mapToLong(member).min().orElseThrow();
            most += slot.stream().mapToLong(member).max().orElseThrow();
            mostSum += slot.stream()
                    .mapToLong(option -> Math.abs(value.applyAsLong(option)))
                    .max()
                    .orElseThrow();
        }
        if (most < 2) {
            return;
        }
        IntVar total = model.newIntVar(-mostSum, mostSum, "");
        model.addEquality(total, sum(value));
        IntVar squared = square(total, mostSum);
        IntVar about = model.newIntVar(0, mostSum * mostSum, "");
        squares += (int) most;
        roundings += (int) most + 1;
        for (long size = Math.max(2, least); size <= most; size++) {
            Literal[] only = least == most ? new Literal[0] : new Literal[] {isSize(sum(member), size)};
            long members = size;
            LinearExprBuilder times = sum(option -> {
                        long x = value.applyAsLong(option);
                        return members * x * x;
                    })
                    .addTerm(squared, -1);
            model.addGreaterOrEqual(LinearExpr.term(about, size), times).onlyEnforceIf(only);
            if (bag.spreadAim().must()) {
                spreadMust(group, value, total, size, 2 * mostSum, only);
            }
        }
        if (bag.spreadAim().importancePoints() > 0) {
            penalty.add(about);
        }
    }

    private long matched(ExactOption option) {
        return Math.round(option.matchMeasureUnits() / matchUnit);
    }

    private Literal isSize(LinearExprBuilder count, long size) {
        BoolVar so = model.newBoolVar("");
        BoolVar fewer = model.newBoolVar("");
        BoolVar more = model.newBoolVar("");
        model.addExactlyOne(new Literal[] {so, fewer, more});
        LinearArgument built = count.build();
        model.addEquality(built, size).onlyEnforceIf(so);
        model.addLessOrEqual(built, size - 1).onlyEnforceIf(fewer);
        model.addGreaterOrEqual(built, size + 1).onlyEnforceIf(more);
        return so;
    }

    private void spreadMust(
            int group, ToLongFunction<ExactOption> value, IntVar total, long size, long most, Literal... only) {
        long tolerance = Math.round(bag.spreadAim().toleranceMeasureUnits() / matchUnit);
        for (int slot = 0; slot < taken.size(); slot++) {
            if (all(slot, option -> option.group() != group)) {
                continue;
            }
            LinearExprBuilder off = LinearExpr.newBuilder();
            add(off, slot, value, size);
            off.addTerm(total, -1);
            BoolVar in = model.newBoolVar("");
            model.addEquality(in, sum(slot, option -> option.group() == group ? 1 : 0));
            List<Literal> both = new ArrayList<>(List.of(only));
            both.add(in);
            breaks.add(beyond(off, size, tolerance, most, both.toArray(Literal[]::new)));
        }
    }
}
