package org.bagwright.sessions;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.text.Numbers;

/**
 * Measured carries of clubs over the flight of the published ball from the same launch. Those of launch monitors are 1.00 to
 * 1.09, mostly 1.04; metres read as yards make that 0.91 to 0.99, yards read as metres 1.09 to 1.19.
 */
final class CarryRatios {
    private static final double LEAST_RATIO = 0.7;
    private static final double MOST_RATIO = 1.4;
    private static final double SHORT_RATIO = 0.985;
    private static final double SHORT_OF_ONE_RATIO = 0.97;
    private static final double LONG_RATIO = 1.085;
    private static final double LONG_OF_ONE_RATIO = 1.1;
    private static final double APART_RATIO = 0.05;

    private final List<Double> ratios = new ArrayList<>();

    void add(double carryM, double flownM) {
        if (flownM > 0) {
            ratios.add(carryM / flownM);
        }
    }

    /**
     * How the carries contradict their unit; empty where they do not.
     *
     * @param confirmed whether a person has confirmed the unit, so that only what is wrong by far counts
     */
    Optional<String> contradiction(boolean confirmed) {
        if (ratios.isEmpty()) {
            return Optional.empty();
        }
        List<Double> sorted = new ArrayList<>(ratios);
        Collections.sort(sorted);
        double median = sorted.get(sorted.size() / 2);
        double least = sorted.size() == 1 ? SHORT_OF_ONE_RATIO : SHORT_RATIO;
        double most = sorted.size() == 1 ? LONG_OF_ONE_RATIO : LONG_RATIO;
        boolean areShort = median < least && sorted.get(sorted.size() - 1) < least + APART_RATIO;
        boolean areLong = median > most && sorted.get(0) > most - APART_RATIO;
        boolean far = median < LEAST_RATIO || median > MOST_RATIO;
        return far || (!confirmed && (areShort || areLong))
                ? Optional.of("carries are " + Numbers.fixed(median, 2)
                        + " of the flight from their own ball speed, launch and spin, usual is 1.00 to 1.09")
                : Optional.empty();
    }
}
