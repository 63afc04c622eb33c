package org.bagwright.planning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.text.Numbers;

/** What makes most of a plan's penalty: one measure, or one club. */
final class PenaltyMessages {
    private static final double LEAST_POINTS = 3;
    private static final double MOST_SHARE = 0.6;
    private static final double WORTH_NAMING_SHARE = 0.08;
    private static final int MOST_SMALL = 3;
    private static final double MUCH_SHARE = 0.97;

    /** Points within which two costs count as the same. */
    private static final double SAME_POINTS = 0.005;

    private final BookResult result;
    private final double missPoints;
    private final List<Cost> costs = new ArrayList<>();

    /** What one club of the plan costs by measure, with the gap after it. */
    private record Cost(Club club, Terms terms) {}

    private PenaltyMessages(BookResult result) {
        this.result = result;
        this.missPoints = missPoints(result);
        for (BagResult bag : result.bags()) {
            List<Option> planned = bag.optionsOf(bag.planned());
            for (int index = 0; index < planned.size(); index++) {
                Option option = planned.get(index);
                Club club = option.isEmpty() ? bag.options().slots().get(index).main() : option.club();
                costs.add(new Cost(club, bag.missTermsAt(bag.planned(), index)));
            }
        }
    }

    /** One message where one measure or else one club dominates; none for a small penalty. */
    static Optional<Message> of(BookResult result) {
        if (missPoints(result) < LEAST_POINTS) {
            return Optional.empty();
        }
        PenaltyMessages made = new PenaltyMessages(result);
        return made.measure().or(made::club);
    }

    /** What the plan costs by the best guess of all carries: shots lower the rest, not the wrench. */
    private static double missPoints(BookResult result) {
        return result.plannedPoints() - result.doubtPoints(BagResult::planned);
    }

    private Optional<Message> measure() {
        for (Measure measure : Measure.values()) {
            double points = points(measure);
            if (points > MOST_SHARE * missPoints) {
                return Optional.of(message(
                        share(points) + " are " + measure.label() + leastWords(measure, points) + ": ",
                        named(measure),
                        cost -> shown(cost.terms().points(measure))));
            }
        }
        return Optional.empty();
    }

    private Optional<Message> club() {
        return costs.stream()
                .filter(cost -> cost.terms().totalPoints() > MOST_SHARE * missPoints)
                .findFirst()
                .map(cost -> message(
                        share(cost.terms().totalPoints()) + " are of one club: ",
                        List.of(cost),
                        each -> measures(each.terms())));
    }

    private String measures(Terms terms) {
        return Arrays.stream(Measure.values())
                .filter(measure -> terms.points(measure) > WORTH_NAMING_SHARE * terms.totalPoints())
                .sorted(Comparator.comparingDouble(terms::points).reversed())
                .map(measure -> measure.label() + " " + shown(terms.points(measure)))
                .collect(Collectors.joining(", "));
    }

    /** The clubs that cost most of a measure, the most expensive first. */
    private List<Cost> named(Measure measure) {
        double least = WORTH_NAMING_SHARE * points(measure);
        List<Cost> sorted = costs.stream()
                .filter(cost -> cost.terms().points(measure) > 0)
                .sorted(Comparator.comparingDouble((Cost cost) -> cost.terms().points(measure))
                        .reversed())
                .toList();
        long large = sorted.stream()
                .filter(cost -> cost.terms().points(measure) >= least)
                .count();
        return sorted.subList(0, (int) Math.min(sorted.size(), Math.max(large, MOST_SMALL)));
    }

    private static Message message(String lead, List<Cost> named, Function<Cost, String> detail) {
        List<Wording.Place> places = named.stream()
                .map(cost -> new Wording.Place(cost.club().golfer(), cost.club().name(), detail.apply(cost)))
                .toList();
        List<String> cells = named.stream().map(cost -> cost.club().cell()).toList();
        return Message.warning(cells.get(0), new Wording(lead, places, ".")).at(cells);
    }

    private double points(Measure measure) {
        return costs.stream().mapToDouble(cost -> cost.terms().points(measure)).sum();
    }

    /** What is known of the least that a measure can cost: that no allowed choice costs less, or how much less. */
    private String leastWords(Measure measure, double points) {
        if (!measure.isOfOption() || measure == Measure.CHANGE) {
            return "";
        }
        double leastPoints = leastPoints(measure);
        String choice = measure == Measure.SWINGWEIGHT ? "no weighting" : "no allowed choice";
        if (leastPoints >= points - SAME_POINTS) {
            return ", and " + choice + " brings it closer";
        }
        return leastPoints >= MUCH_SHARE * points
                ? ", and " + choice + " brings it much closer"
                : "; the best choices for it alone would still cost " + shown(leastPoints);
    }

    /** What a measure costs where every slot is filled with what is best for it alone, points. */
    private double leastPoints(Measure measure) {
        return result.bags().stream()
                .flatMap(bag -> bag.options().slots().stream())
                .mapToDouble(slot -> leastPoints(slot, measure))
                .sum();
    }

    private static double leastPoints(SlotOptions slot, Measure measure) {
        return slot.openIndexes().stream()
                .mapToDouble(index -> slot.options()
                        .get(index)
                        .terms()
                        .withoutDoubt(Measure.CARRY)
                        .points(measure))
                .min()
                .orElseThrow();
    }

    private String share(double points) {
        return shown(points) + " of " + shown(missPoints)
                + (result.doubtPoints(BagResult::planned) > 0 ? " points of miss" : " points");
    }

    private String shown(double points) {
        return Numbers.fixed(points, missPoints < 20 ? 1 : 0);
    }
}
