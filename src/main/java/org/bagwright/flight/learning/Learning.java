package org.bagwright.flight.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.flight.GolferBall;
import org.bagwright.flight.learning.Posterior.Residuals;

/**
 * Learns a golfer's unknowns from all his shots at once: Gauss-Newton with the priors of {@link Unknown}, the carries near him
 * by quadratic surfaces that are made again where he is found.
 */
public final class Learning {
    private static final int MOST_STEPS = 8;
    private static final double LONGEST_STEP = 2.5;
    private static final double CLOSE = 1e-7;

    /** Groups of no more shots are scored against the golfer's other clubs, not against their own median. */
    static final int FEW = 4;

    private final GolferBall air;
    private final List<ModelledClub> clubs;
    private List<ShotGroup> groups;
    private List<ClubModel> models = List.of();
    private Scatter scatter;
    private Posterior posterior;

    /**
     * Learns.
     *
     * @param air flights in the air of the book
     * @param clubs his clubs
     * @param unknowns what is unknown of him
     * @param groups his shots
     */
    public Learning(GolferBall air, List<ModelledClub> clubs, Unknowns unknowns, List<ShotGroup> groups) {
        this.air = air;
        this.clubs = clubs;
        this.groups = ShotWeights.fromMedians(groups);
        this.scatter = Scatter.of(this.groups);
        this.posterior = Posterior.prior(unknowns.count());
        expand();
        if (!groups.isEmpty()) {
            settle();
            judgeFew();
            expand();
            settle();
        }
    }

    public Posterior posterior() {
        return posterior;
    }

    public Scatter scatter() {
        return scatter;
    }

    /** The shots with their weights. */
    public List<ShotGroup> groups() {
        return groups;
    }

    /** The clubs in their order. */
    List<ModelledClub> clubs() {
        return clubs;
    }

    /** The models of the clubs near the golfer, in their order. */
    public List<ClubModel> models() {
        return models;
    }

    private void expand() {
        double[] at = posterior.mean();
        models = clubs.parallelStream().map(club -> club.near(air, at)).toList();
    }

    private void settle() {
        double[] at = posterior.mean();
        for (int step = 0; step < MOST_STEPS; step++) {
            Posterior next = Posterior.of(at, residuals(at));
            double longest = longestStep(at, next.mean());
            double share = Math.min(1, LONGEST_STEP / longest);
            double[] stepped = new double[at.length];
            for (int i = 0; i < at.length; i++) {
                stepped[i] = at[i] + share * (next.mean()[i] - at[i]);
            }
            at = stepped;
            posterior = next.about(at);
            if (longest < CLOSE) {
                return;
            }
        }
    }

    private static double longestStep(double[] from, double[] to) {
        return IntStream.range(0, from.length)
                .mapToDouble(i -> Math.abs(to[i] - from[i]))
                .max()
                .orElse(0);
    }

    /** What his shots say near these unknowns. */
    List<Residuals> residuals(double[] at) {
        return groups.stream()
                .filter(group -> !group.measured().isEmpty())
                .map(group -> residuals(group, at, scatter))
                .toList();
    }

    /** The same of a group of other shots with one of his clubs, which scatter as is given. */
    Residuals residuals(ShotGroup group, double[] at, Scatter scatters) {
        ModelledClub club = clubs.get(group.club());
        ClubModel model = models.get(group.club());
        double[] arguments = arguments(group, at);
        double[] expected = model.quantities(arguments, group.presented());
        double[][] byArguments = model.slopes(arguments, group.presented());
        List<Quantity> measured = group.measured();
        double[] off = new double[measured.size()];
        double[][] slopes = new double[measured.size()][];
        for (int row = 0; row < off.length; row++) {
            Quantity quantity = measured.get(row);
            off[row] = group.mean(quantity) - expected[quantity.ordinal()];
            slopes[row] = club.byUnknowns(byArguments[quantity.ordinal()]);
            slopes[row][group.day()] += Unknown.DAY * byArguments[quantity.ordinal()][Argument.LN_HEAD_SPEED.ordinal()];
        }
        double[] carrySlopes = model.carrySlopes(arguments, group.presented());
        return Residuals.of(club.head(), off, slopes, scatters.covariance(group, carrySlopes));
    }

    /** The arguments of a club on the day of a group. */
    double[] arguments(ShotGroup group, double[] at) {
        double[] arguments = clubs.get(group.club()).arguments(at);
        arguments[Argument.LN_HEAD_SPEED.ordinal()] += Unknown.DAY * at[group.day()];
        return arguments;
    }

    /** Weighs the shots of small groups once more, against the golfer without the club. */
    private void judgeFew() {
        double[] at = posterior.mean();
        List<Residuals> all = residuals(at);
        List<ShotGroup> judged = new ArrayList<>();
        for (ShotGroup group : groups) {
            judged.add(group.shots().size() > FEW ? group : judged(group, at, all));
        }
        groups = judged;
        scatter = Scatter.of(groups);
    }

    private ShotGroup judged(ShotGroup group, double[] at, List<Residuals> all) {
        int head = clubs.get(group.club()).head();
        Posterior others = Posterior.of(
                at, all.stream().filter(residuals -> residuals.head() != head).toList());
        return judged(group, others, scatter);
    }

    /** A group of few shots, weighed against a golfer who is known from other shots. */
    ShotGroup judged(ShotGroup group, Posterior others, Scatter scatters) {
        double[] arguments = arguments(group, others.mean());
        ClubModel model = models.get(group.club());
        double[] expected = model.quantities(arguments, group.presented());
        double[][] slopes = model.slopes(arguments, group.presented());
        double[] doubts = new double[Quantity.COUNT];
        for (Quantity quantity : Quantity.values()) {
            double[] byUnknowns = clubs.get(group.club()).byUnknowns(slopes[quantity.ordinal()]);
            doubts[quantity.ordinal()] = Math.max(1e-9, others.variance(byUnknowns));
        }
        return ShotWeights.against(group, scatters, expected, doubts);
    }
}
