package org.bagwright.search.score;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.Terms;

/**
 * The score straight from the formula, importance x (deviation / tolerance)^2 a term, each term rounded to micropoints,
 * each broken must in thousandths of its tolerance rounded up; written without a look at the search's own sums.
 */
public final class HandScore {
    private static final double NOISE = 1e-6;

    private long hard;
    private long medium;
    private long soft;

    private HandScore() {}

    public static Cost cost(BookOptions book, List<List<Integer>> chosen) {
        HandScore score = new HandScore();
        int[] taken = new int[book.stock().size()];
        for (int bag = 0; bag < chosen.size(); bag++) {
            BagOptions options = book.bags().get(bag);
            List<Integer> places = chosen.get(bag);
            List<Option> bagChoice = IntStream.range(0, places.size())
                    .mapToObj(slot -> options.slots().get(slot).options().get(places.get(slot)))
                    .toList();
            score.add(options, bagChoice);
            for (Option option : bagChoice) {
                for (int item = 0; item < taken.length; item++) {
                    taken[item] += option.takes().get(item);
                }
            }
        }
        for (int item = 0; item < taken.length; item++) {
            score.hard += Math.max(0, taken[item] - book.stock().get(item).available());
        }
        return new Cost(score.hard, score.medium, score.soft);
    }

    private void add(BagOptions bag, List<Option> options) {
        int changes = 0;
        int clubs = 0;
        for (Option option : options) {
            changes += option.changes();
            clubs += option.isEmpty() ? 0 : 1;
            addOwn(bag, option);
        }
        hard += Math.max(0, clubs - 14);
        if (bag.golfer().mostChanges().isPresent()) {
            hard += Math.max(0, changes - bag.golfer().mostChanges().getAsInt());
        }
        addGaps(bag, options);
        addSpread(bag.spreadAim(), options);
    }

    private void addOwn(BagOptions bag, Option option) {
        Terms terms = option.terms();
        hard += option.open() ? 0 : 1;
        for (Measure measure : Measure.values()) {
            medium += terms.breaks(measure);
            soft += Math.round(terms.points(measure) * 1e6);
        }
        if (!option.isEmpty()) {
            addLimit(bag.aims().of(Measure.SITS).toleranceMeasureUnits(), option, LimitKind.MOST_OPEN, -sits(option));
            addLimit(bag.aims().of(Measure.SITS).toleranceMeasureUnits(), option, LimitKind.MOST_CLOSED, sits(option));
        }
        if (option.shot().isPresent()) {
            double toleranceM = bag.aims().of(Measure.CARRY).toleranceMeasureUnits();
            addLimit(
                    toleranceM,
                    option,
                    LimitKind.CARRY_LEAST,
                    -option.shot().get().carryM());
            addLimit(
                    toleranceM,
                    option,
                    LimitKind.CARRY_MOST,
                    option.shot().get().carryM());
            addLimit(1, option, LimitKind.LANDING_LEAST, -option.shot().get().landingDeg());
        }
    }

    private static double sits(Option option) {
        return option.pose().resting().closedDeg();
    }

    /** @param figure what must not be more than the limit, or with both signs turned not less */
    private void addLimit(double tolerance, Option from, LimitKind kind, double figure) {
        ClubSetup setup = from.setup().orElseThrow();
        setup.wishes().limits().of(kind).ifPresent(limit -> {
            boolean least = kind != LimitKind.MOST_CLOSED && kind != LimitKind.CARRY_MOST && kind != LimitKind.GAP_MOST;
            double most = least ? -limit.valueMeasureUnits() : limit.valueMeasureUnits();
            medium += Math.max(0, (long) Math.ceil((figure - most) / tolerance * 1000 - NOISE));
        });
    }

    private void addGaps(BagOptions bag, List<Option> options) {
        List<Option> flying =
                options.stream().filter(option -> option.carryM().isPresent()).toList();
        Optional<Option> longestToday = bag.slots().stream()
                .map(SlotOptions::today)
                .filter(option -> option.shot().isPresent())
                .findFirst();
        if (!flying.isEmpty() && longestToday.isPresent()) {
            double lostM = longestToday.get().shot().get().carryM()
                    - flying.get(0).shot().get().carryM();
            addDeviation(bag.aims().of(Measure.REACH), Math.max(0, lostM));
        }
        for (int next = 1; next < flying.size(); next++) {
            Option longer = flying.get(next - 1);
            double gapM =
                    longer.carryM().getAsDouble() - flying.get(next).carryM().getAsDouble();
            double wishM = longer.club()
                    .targets()
                    .gapWishM()
                    .orElse(bag.keptGapsM().getOrDefault(longer.club().slot(), bag.gapWishM()));
            addDeviation(
                    bag.gapAim(),
                    gapM - wishM,
                    bag.gapAim().onWhatIsLikely() ? varianceM2(longer, flying.get(next)) : 0);
            addLimit(bag.gapAim().toleranceMeasureUnits(), longer, LimitKind.GAP_LEAST, -gapM);
            addLimit(bag.gapAim().toleranceMeasureUnits(), longer, LimitKind.GAP_MOST, gapM);
            if (gapM <= 0) {
                medium += 1000 + (long) Math.ceil(-gapM * 1000 - NOISE);
            }
        }
    }

    private void addSpread(Aim aim, List<Option> options) {
        Map<String, double[]> sums = new HashMap<>();
        List<MatchValue> values = options.stream()
                .flatMap(option -> option.setup().stream())
                .flatMap(setup -> setup.match().stream())
                .toList();
        for (MatchValue value : values) {
            double[] sum = sums.computeIfAbsent(value.group(), group -> new double[2]);
            sum[0] += value.valueMeasureUnits();
            sum[1]++;
        }
        for (MatchValue value : values) {
            double[] sum = sums.get(value.group());
            addDeviation(aim, value.valueMeasureUnits() - sum[0] / sum[1]);
        }
    }

    /** Of what both share only the difference counts; what each has by itself adds up. */
    private static double varianceM2(Option longer, Option shorter) {
        double sum = 0;
        for (int factor = 0; factor < CarryDoubt.SHARED; factor++) {
            sum += Math.pow(longer.doubt().sharedM(factor) - shorter.doubt().sharedM(factor), 2);
        }
        for (Option option : List.of(longer, shorter)) {
            for (int factor = 0; factor < option.doubt().ownCount(); factor++) {
                sum += Math.pow(option.doubt().ownM(factor), 2);
            }
        }
        return sum;
    }

    private void addDeviation(Aim aim, double deviation) {
        addDeviation(aim, deviation, 0);
    }

    private void addDeviation(Aim aim, double deviation, double variance) {
        double tolerances = Math.abs(deviation) / aim.toleranceMeasureUnits();
        double tolerancesSquared = variance / (aim.toleranceMeasureUnits() * aim.toleranceMeasureUnits());
        double points = aim.importancePoints() * tolerances * tolerances + aim.importancePoints() * tolerancesSquared;
        soft += Math.round(points * 1e6);
        if (aim.must()) {
            medium += Math.max(0, (long) Math.ceil((tolerances - 1) * 1000 - NOISE));
        }
    }
}
