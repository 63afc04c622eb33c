package org.bagwright.flight.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bagwright.domain.session.Forecast;
import org.bagwright.flight.learning.Posterior.Residuals;

/**
 * The shots of one day against what was expected of them by the golfer's earlier shots. Whether he swung quicker or slower on
 * the day is known from that day's shots with his other heads; those with the same head do not speak for themselves.
 */
public final class DayForecast {
    private final Learning before;
    private final List<ShotGroup> groups;
    private final Scatter scatter;
    private final double[] at;
    private final List<Residuals> known;

    /**
     * @param before the golfer as his earlier shots show him
     * @param shots the shots of the day, in groups
     */
    public DayForecast(Learning before, List<ShotGroup> shots) {
        this.before = before;
        this.at = before.posterior().mean();
        this.known = before.residuals(at);
        List<ShotGroup> weighted = ShotWeights.fromMedians(shots);
        Scatter first = scatterWith(weighted);
        this.groups = weighted.stream()
                .map(group ->
                        group.shots().size() > Learning.FEW ? group : before.judged(group, before.posterior(), first))
                .toList();
        this.scatter = scatterWith(groups);
    }

    private Scatter scatterWith(List<ShotGroup> day) {
        return Scatter.of(Stream.concat(before.groups().stream(), day.stream()).toList());
    }

    /** What was expected of each group, in their order, and how it came out; empty where no carry was measured. */
    public List<Optional<Forecast>> forecasts() {
        return groups.stream().map(this::forecast).toList();
    }

    private Optional<Forecast> forecast(ShotGroup group) {
        int carry = group.measured().indexOf(Quantity.CARRY);
        if (carry < 0) {
            return Optional.empty();
        }
        ModelledClub club = before.clubs().get(group.club());
        ClubModel model = before.models().get(group.club());
        double[] arguments = before.arguments(group, at);
        double expected = model.quantities(arguments, group.presented())[Quantity.CARRY.ordinal()];
        double[] byArguments = model.slopes(arguments, group.presented())[Quantity.CARRY.ordinal()];
        double[] slopes = club.byUnknowns(byArguments);
        slopes[group.day()] += Unknown.DAY * byArguments[Argument.LN_HEAD_SPEED.ordinal()];
        Posterior onTheDay = withOthers(club.head());
        double day = 0;
        for (int i = 0; i < slopes.length; i++) {
            day += slopes[i] * (onTheDay.mean()[i] - at[i]);
        }
        double[][] ofMeans = scatter.covariance(group, model.carrySlopes(arguments, group.presented()));
        double off = group.mean(Quantity.CARRY) - expected - day;
        double sd = Math.sqrt(onTheDay.variance(slopes) + ofMeans[carry][carry]);
        double expectedM = Math.exp(expected + day);
        return Optional.of(new Forecast(
                Math.exp(expected), expectedM - Math.exp(expected), expectedM * Math.expm1(off), expectedM * sd));
    }

    /** The golfer after the shots of the day with his other heads. */
    private Posterior withOthers(int head) {
        List<Residuals> all = new ArrayList<>(known);
        for (ShotGroup group : groups) {
            if (before.clubs().get(group.club()).head() != head
                    && !group.measured().isEmpty()) {
                all.add(before.residuals(group, at, scatter));
            }
        }
        return Posterior.of(at, all);
    }
}
