package org.bagwright.planning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.WantedRange;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.text.Numbers;
import org.bagwright.planning.options.BagMaker;

/**
 * Checks a plan before anybody works from it: every option that it takes or finds in the bag is computed once more from
 * the book, and its penalty is summed once more from the bare numbers, without the code that the search sums with.
 */
final class PlanAudit {
    private static final double RELATIVE = 1e-9;

    private final Book book;
    private final BagMaker maker;

    private PlanAudit(Book book, BagMaker maker) {
        this.book = book;
        this.maker = maker;
    }

    /**
     * Checks a result.
     *
     * @throws PlanDisagreement if the program does not agree with itself
     */
    static void check(BookResult result) {
        check(result, new BagMaker(result.book()));
    }

    /**
     * As {@link #check(BookResult)}.
     *
     * @param maker computes the options of the book once more; not the one that made those of the result
     */
    static void check(BookResult result, BagMaker maker) {
        PlanAudit audit = new PlanAudit(result.book(), maker);
        result.bags().parallelStream().forEach(audit::check);
    }

    private void check(BagResult bag) {
        List<Option> looked = new ArrayList<>(bag.optionsOf(bag.today()));
        looked.addAll(bag.optionsOf(bag.planned()));
        List<Option> again = maker.again(bag.golfer(), looked);
        for (int index = 0; index < looked.size(); index++) {
            if (!looked.get(index).equals(again.get(index))) {
                throw new PlanDisagreement(bag.golfer().name() + ": the numbers of "
                        + looked.get(index).clubText() + " ("
                        + looked.get(index).key()
                        + ") differ when computed again");
            }
        }
        check(bag, bag.today(), "today");
        check(bag, bag.planned(), "planned");
    }

    private void check(BagResult bag, BagState state, String name) {
        double told = state.score().penaltyPoints();
        double summed = penaltyPoints(bag, bag.optionsOf(state));
        if (!(Math.abs(told - summed) <= RELATIVE * Math.max(1, Math.abs(summed)))) {
            throw new PlanDisagreement(bag.golfer().name() + ": the penalty " + name + " is shown as "
                    + Numbers.trimmed(told, 6) + " points but adds up to " + Numbers.trimmed(summed, 6));
        }
    }

    private double penaltyPoints(BagResult bag, List<Option> options) {
        double points = 0;
        for (Measure measure : Measure.values()) {
            points += switch (measure.scope()) {
                case CLUB -> clubPoints(measure, options);
                case NEIGHBOURS -> gapPoints(measure, bag, options);
                case LONGEST -> reachPoints(measure, bag, options);
                case GROUP -> spreadPoints(measure, options);
                case ITEMS -> itemPoints(measure, options);
            };
        }
        return points;
    }

    private double itemPoints(Measure measure, List<Option> options) {
        int items = options.stream().mapToInt(Option::changes).sum();
        return squared(measure, 1) * items;
    }

    private double clubPoints(Measure measure, List<Option> options) {
        double points = 0;
        for (Option option : options) {
            if (option.setup().isPresent()) {
                points += clubPoints(measure, option.setup().get());
            }
        }
        return points;
    }

    /** What a value outside what is wanted costs; nothing where nothing is wanted. */
    private double clubPoints(Measure measure, ClubSetup setup) {
        OptionalDouble value = setup.value(measure);
        Optional<WantedRange> wanted = setup.wishes().of(measure);
        if (value.isEmpty() || wanted.isEmpty()) {
            return 0;
        }
        double above = Math.max(0, value.getAsDouble() - wanted.get().mostMeasureUnits());
        double below = Math.max(0, wanted.get().leastMeasureUnits() - value.getAsDouble());
        return squared(measure, above + below)
                + (measure == Measure.CARRY ? doubt(measure, setup.carryVarianceM2()) : 0);
    }

    private double gapPoints(Measure measure, BagResult bag, List<Option> options) {
        List<Option> flying =
                options.stream().filter(option -> option.carryM().isPresent()).toList();
        double points = 0;
        for (int index = 0; index + 1 < flying.size(); index++) {
            double gapM = flying.get(index).carryM().getAsDouble()
                    - flying.get(index + 1).carryM().getAsDouble();
            double wishM = wishM(bag, flying.get(index).club());
            points += squared(measure, gapM - wishM)
                    + doubt(measure, varianceM2(flying.get(index), flying.get(index + 1)));
        }
        return points;
    }

    /** The gap that the row of a club asks for, else today's after its slot where that is to be kept, else the golfer's. */
    private static double wishM(BagResult bag, Club club) {
        BagOptions options = bag.options();
        return club.targets().gapWishM().orElse(options.keptGapsM().getOrDefault(club.slot(), options.gapWishM()));
    }

    private double reachPoints(Measure measure, BagResult bag, List<Option> options) {
        List<Option> flying =
                options.stream().filter(option -> option.carryM().isPresent()).toList();
        List<Option> today = bag.optionsOf(bag.today()).stream()
                .filter(option -> option.carryM().isPresent())
                .toList();
        if (flying.isEmpty() || today.isEmpty()) {
            return 0;
        }
        double lostM =
                today.get(0).carryM().getAsDouble() - flying.get(0).carryM().getAsDouble();
        return lostM > 0 ? squared(measure, lostM) : 0;
    }

    private double spreadPoints(Measure measure, List<Option> options) {
        Map<String, List<Double>> groups = options.stream()
                .flatMap(option -> option.setup().flatMap(ClubSetup::match).stream())
                .collect(Collectors.groupingBy(
                        MatchValue::group,
                        LinkedHashMap::new,
                        Collectors.mapping(MatchValue::valueMeasureUnits, Collectors.toList())));
        double points = 0;
        for (List<Double> values : groups.values()) {
            double mean = values.stream().collect(Collectors.averagingDouble(value -> value));
            for (double value : values) {
                points += squared(measure, value - mean);
            }
        }
        return points;
    }

    /** What two clubs share alike moves both and leaves their gap as it is. */
    private static double varianceM2(Option from, Option to) {
        CarryDoubt longer = from.doubt();
        CarryDoubt shorter = to.doubt();
        double varianceM2 = longer.varianceM2() + shorter.varianceM2();
        for (int factor = 0; factor < CarryDoubt.SHARED; factor++) {
            varianceM2 -= 2 * longer.sharedM(factor) * shorter.sharedM(factor);
        }
        return varianceM2;
    }

    private double doubt(Measure measure, double variance) {
        Aim aim = book.aims().of(measure);
        return aim.onWhatIsLikely()
                ? aim.importancePoints() * variance / aim.toleranceMeasureUnits() / aim.toleranceMeasureUnits()
                : 0;
    }

    private double squared(Measure measure, double off) {
        Aim aim = book.aims().of(measure);
        double tolerances = off / aim.toleranceMeasureUnits();
        return aim.importancePoints() * tolerances * tolerances;
    }
}
