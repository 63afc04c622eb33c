package org.bagwright.workbook.ladder;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.option.PoseNumbers;

/**
 * The order in which a closed line joins the settings of a sleeve on the plane of lie and loft: round their middle. A setting
 * near the middle, as a sleeve with two rings may have, is left out.
 *
 * @param places the places of the settings that the line joins, in order
 * @param round whether it joins all of them, so that it may bend from one to the next
 */
record SleeveCurve(List<Integer> places, boolean round) {
    private static final int LEAST_SETTINGS = 3;
    private static final int LEAST_ROUND = 4;
    /** Settings nearer to the middle than this share of the mean distance are inside the line. */
    private static final double INSIDE_RATIO = 0.5;

    SleeveCurve {
        places = List.copyOf(places);
    }

    static SleeveCurve through(List<PoseNumbers> settings) {
        double lieDeg = settings.stream()
                .mapToDouble(PoseNumbers::gaugeLieDeg)
                .average()
                .orElse(0);
        double loftDeg = settings.stream()
                .mapToDouble(PoseNumbers::gaugeLoftDeg)
                .average()
                .orElse(0);
        double[] awayDeg = settings.stream()
                .mapToDouble(pose -> Math.hypot(pose.gaugeLieDeg() - lieDeg, pose.gaugeLoftDeg() - loftDeg))
                .toArray();
        double meanDeg = IntStream.range(0, awayDeg.length)
                .mapToDouble(place -> awayDeg[place])
                .average()
                .orElse(0);
        List<Integer> joined = IntStream.range(0, settings.size())
                .filter(place -> awayDeg[place] > INSIDE_RATIO * meanDeg)
                .boxed()
                .sorted(Comparator.comparingDouble(place -> Math.atan2(
                        settings.get(place).gaugeLoftDeg() - loftDeg,
                        settings.get(place).gaugeLieDeg() - lieDeg)))
                .toList();
        return new SleeveCurve(joined, joined.size() == settings.size() && joined.size() >= LEAST_ROUND);
    }

    /** Whether there are enough settings for a line round them. */
    boolean exists() {
        return places.size() >= LEAST_SETTINGS;
    }

    /** The place of each point of the line, the first once more at its end. */
    List<Integer> closed() {
        return IntStream.rangeClosed(0, places.size())
                .mapToObj(point -> places.get(point % places.size()))
                .toList();
    }
}
