package org.bagwright.search.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * For every matched group of a model the interval that holds its mean. The search splits the whole range of means into
 * such intervals; within a narrow one what spread costs is nearly an own term of each club.
 */
final class MeanIntervals {
    private final double[] least;
    private final double[] most;

    private MeanIntervals(double[] least, double[] most) {
        this.least = least;
        this.most = most;
    }

    /** All means that the clubs of a model can have. */
    static MeanIntervals all(BagModel model) {
        double[] least = new double[model.groups.count()];
        double[] most = new double[model.groups.count()];
        Arrays.fill(least, Double.NEGATIVE_INFINITY);
        Arrays.fill(most, Double.POSITIVE_INFINITY);
        return new MeanIntervals(least, most).within(model).orElseThrow();
    }

    /** Intervals of no width at the means of a choice; at the centre where it has no club of a group. */
    MeanIntervals means(BagModel model, List<ExactOption> chosen) {
        double[] means = new double[model.groups.count()];
        for (int group = 0; group < means.length; group++) {
            int place = group;
            means[group] = chosen.stream()
                    .filter(option -> model.groups.of(option) == place)
                    .mapToDouble(ExactOption::matchMeasureUnits)
                    .average()
                    .orElse(centre(group));
        }
        return new MeanIntervals(means, means);
    }

    double centre(int group) {
        return (least[group] + most[group]) / 2;
    }

    double half(int group) {
        return (most[group] - least[group]) / 2;
    }

    /** How far a number is outside the interval of its group, with its sign. */
    double outside(int group, double number) {
        return number < least[group] ? number - least[group] : Math.max(0, number - most[group]);
    }

    /** The part of the intervals that the means of a model can reach, or nothing. */
    Optional<MeanIntervals> within(BagModel model) {
        double[] low = least.clone();
        double[] high = most.clone();
        for (int group = 0; group < low.length; group++) {
            if (model.groups.members(group) == 0) {
                continue;
            }
            double[] span = span(model, group);
            low[group] = Math.max(low[group], span[0]);
            high[group] = Math.min(high[group], span[1]);
            if (low[group] > high[group]) {
                return Optional.empty();
            }
        }
        return Optional.of(new MeanIntervals(low, high));
    }

    /** The least and the most that the mean of a group can be. */
    private static double[] span(BagModel model, int group) {
        List<double[]> spans = new ArrayList<>();
        boolean certain = true;
        for (SlotLayer layer : model.layers) {
            double[] span = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
            boolean always = true;
            for (ExactOption option : layer.options) {
                boolean member = model.groups.of(option) == group;
                always &= member;
                if (member) {
                    span[0] = Math.min(span[0], option.matchMeasureUnits());
                    span[1] = Math.max(span[1], option.matchMeasureUnits());
                }
            }
            if (span[0] <= span[1]) {
                spans.add(span);
                certain &= always;
            }
        }
        return certain ? meanSpan(spans) : wholeSpan(spans);
    }

    private static double[] meanSpan(List<double[]> spans) {
        double low = spans.stream().mapToDouble(span -> span[0]).sum() / spans.size();
        double high = spans.stream().mapToDouble(span -> span[1]).sum() / spans.size();
        return new double[] {low, high};
    }

    private static double[] wholeSpan(List<double[]> spans) {
        double low = spans.stream().mapToDouble(span -> span[0]).min().orElse(0);
        double high = spans.stream().mapToDouble(span -> span[1]).max().orElse(0);
        return new double[] {low, high};
    }

    /** For some groups the least intervals around those of all parts. */
    MeanIntervals around(List<MeanIntervals> parts, int[] groups) {
        double[] low = least.clone();
        double[] high = most.clone();
        for (int group : groups) {
            low[group] =
                    parts.stream().mapToDouble(part -> part.least[group]).min().orElse(low[group]);
            high[group] =
                    parts.stream().mapToDouble(part -> part.most[group]).max().orElse(high[group]);
        }
        return new MeanIntervals(low, high);
    }

    /** The two halves across one group. */
    List<MeanIntervals> halves(int group) {
        double[] lowerMost = most.clone();
        double[] upperLeast = least.clone();
        lowerMost[group] = centre(group);
        upperLeast[group] = centre(group);
        return List.of(new MeanIntervals(least, lowerMost), new MeanIntervals(upperLeast, most));
    }
}
