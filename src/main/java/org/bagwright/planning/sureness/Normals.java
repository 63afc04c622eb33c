package org.bagwright.planning.sureness;

import java.util.SplittableRandom;

/** Standard normal numbers by the polar method, with arithmetic that is the same on every machine. */
final class Normals {
    private final SplittableRandom random;

    Normals(long seed) {
        random = new SplittableRandom(seed);
    }

    double next() {
        while (true) {
            double across = 2 * random.nextDouble() - 1;
            double up = 2 * random.nextDouble() - 1;
            double square = across * across + up * up;
            if (square > 0 && square < 1) {
                return across * StrictMath.sqrt(-2 * StrictMath.log(square) / square);
            }
        }
    }

    /** So many of them. */
    double[] next(int count) {
        double[] numbers = new double[count];
        for (int index = 0; index < count; index++) {
            numbers[index] = next();
        }
        return numbers;
    }
}
