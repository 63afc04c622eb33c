package org.bagwright.learning;

import java.util.ArrayList;
import java.util.List;

/** Chances that were stated, and whether it came so. */
final class Chances {
    /**
     * A chance that was stated.
     *
     * @param stated from 0 to 1
     * @param came whether it came so
     */
    record Chance(double stated, boolean came) {}

    private final List<Chance> all = new ArrayList<>();

    void add(Chance chance) {
        all.add(chance);
    }

    void add(Chances other) {
        all.addAll(other.all);
    }

    int count() {
        return all.size();
    }

    /** Those that were stated between two of them; up to 1 those that were stated as certain too. */
    Chances between(double least, double below) {
        Chances some = new Chances();
        all.stream()
                .filter(chance -> chance.stated() >= least && (chance.stated() < below || below >= 1))
                .forEach(some::add);
        return some;
    }

    /** Not a number where there are none. */
    double meanStated() {
        return all.stream().mapToDouble(Chance::stated).average().orElse(Double.NaN);
    }

    /** Not a number where there are none. */
    double shareThatCame() {
        return all.stream()
                .mapToDouble(chance -> chance.came() ? 1 : 0)
                .average()
                .orElse(Double.NaN);
    }

    /** How far what was stated is from what came. */
    double apart() {
        return Math.abs(meanStated() - shareThatCame());
    }

    /** The mean squared error of the chances over that of one constant for all; below 1 is worth something. */
    double brierRatio() {
        double constant = shareThatCame();
        double stated = 0;
        double fixed = 0;
        for (Chance chance : all) {
            double came = chance.came() ? 1 : 0;
            stated += (chance.stated() - came) * (chance.stated() - came);
            fixed += (constant - came) * (constant - came);
        }
        return stated / fixed;
    }
}
