package org.bagwright.planning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.bagwright.domain.Aims;
import org.bagwright.domain.BagResult;
import org.bagwright.domain.BagState;
import org.bagwright.domain.Book;
import org.bagwright.domain.BookResult;
import org.bagwright.domain.Club;
import org.bagwright.domain.ClubSetup;
import org.bagwright.domain.Golfer;
import org.bagwright.domain.MatchValue;
import org.bagwright.domain.Measure;
import org.bagwright.domain.Numbers;
import org.bagwright.domain.Option;
import org.bagwright.domain.Swingweight;

/**
 * Checks a plan before anybody works from it: every option that it takes or finds in the bag is computed once more from
 * the book, and its penalty is summed once more from the bare numbers, without the code that the search sums with.
 */
final class PlanAudit {
    private static final double RELATIVE = 1e-9;

    private final Book book;
    private final BagMaker maker;

    private PlanAudit(Book book) {
        this.book = book;
        this.maker = new BagMaker(book);
    }

    /**
     * Checks a result.
     *
     * @throws PlanDisagreement if the program does not agree with itself
     */
    static void check(BookResult result) {
        PlanAudit audit = new PlanAudit(result.book());
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
        double points = gapPoints(bag, options) + spreadPoints(options);
        for (Option option : options) {
            points += importance(Measure.CHANGE)
                    * option.changes()
                    / Math.pow(book.aims().of(Measure.CHANGE).toleranceMeasureUnits(), 2);
            if (option.setup().isPresent()) {
                points += ownPoints(bag.golfer(), option.setup().get());
            }
        }
        return points;
    }

    private double ownPoints(Golfer golfer, ClubSetup setup) {
        Club club = setup.club();
        double sitsDeg = setup.pose().sitsClosedDeg();
        double tooClosedDeg =
                Math.max(0, sitsDeg - golfer.sitsRange().mostClosedDeg().orElse(sitsDeg));
        double tooOpenDeg = Math.max(0, golfer.sitsRange().mostOpenDeg().orElse(sitsDeg) - sitsDeg);
        double points = squared(
                        Measure.LOFT,
                        setup.pose().gaugeLoftDeg(),
                        club.targets().loftDeg())
                + squared(Measure.LIE, setup.pose().gaugeLieDeg(), OptionalDouble.of(club.lieTargetDeg()))
                + squared(Measure.SITS, tooClosedDeg + tooOpenDeg, OptionalDouble.of(0));
        if (setup.shot().isPresent()) {
            points += squared(
                    Measure.CARRY, setup.shot().get().carryM(), club.targets().carryM());
        }
        if (club.targets().swingweight().isPresent()) {
            double wanted =
                    club.targets().swingweight().map(Swingweight::scalePoints).get();
            points +=
                    squared(Measure.SWINGWEIGHT, setup.build().swingweight().scalePoints(), OptionalDouble.of(wanted));
        }
        return points;
    }

    private double gapPoints(BagResult bag, List<Option> options) {
        List<Option> flying =
                options.stream().filter(option -> option.carryM().isPresent()).toList();
        double points = 0;
        for (int index = 0; index + 1 < flying.size(); index++) {
            double gapM = flying.get(index).carryM().getAsDouble()
                    - flying.get(index + 1).carryM().getAsDouble();
            double wishM = flying.get(index)
                    .club()
                    .targets()
                    .gapWishM()
                    .orElse(bag.options().gapWishM());
            points += squared(Measure.GAP, gapM, OptionalDouble.of(wishM));
        }
        return points;
    }

    private double spreadPoints(List<Option> options) {
        Map<String, List<Double>> groups = new LinkedHashMap<>();
        for (Option option : options) {
            MatchValue match = option.setup().flatMap(ClubSetup::match).orElse(null);
            if (match != null) {
                groups.computeIfAbsent(match.group(), group -> new ArrayList<>())
                        .add(match.valueMeasureUnits());
            }
        }
        double points = 0;
        for (List<Double> values : groups.values()) {
            OptionalDouble mean =
                    values.stream().mapToDouble(Double::doubleValue).average();
            for (double value : values) {
                points += squared(Measure.SPREAD, value, mean);
            }
        }
        return points;
    }

    private double importance(Measure measure) {
        return book.aims().of(measure).importancePoints();
    }

    /** What a value off what is wanted costs; nothing where nothing is wanted. */
    private double squared(Measure measure, double value, OptionalDouble wanted) {
        if (wanted.isEmpty()) {
            return 0;
        }
        Aims aims = book.aims();
        double tolerances = (value - wanted.getAsDouble()) / aims.of(measure).toleranceMeasureUnits();
        return importance(measure) * tolerances * tolerances;
    }
}
