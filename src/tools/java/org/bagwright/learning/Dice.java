package org.bagwright.learning;

import java.util.Random;

/** Random draws of one hidden golfer; neighbouring seeds differ from the first draw on. */
final class Dice {
    private final Random random;
    private final double spreadRatio;

    Dice(long seed) {
        this(seed, 1);
    }

    /** @param spreadRatio factor on every standard deviation; 0 draws nothing but means */
    Dice(long seed, double spreadRatio) {
        this.random = new Random(seed * 0x9E3779B97F4A7C15L);
        this.spreadRatio = spreadRatio;
    }

    /** A normal draw with mean 0. */
    double normal(double sd) {
        return spreadRatio * sd * random.nextGaussian();
    }

    double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    boolean chance(double ratio) {
        return random.nextDouble() < ratio;
    }

    /** A whole number from 0 to count - 1. */
    int below(int count) {
        return random.nextInt(count);
    }
}
