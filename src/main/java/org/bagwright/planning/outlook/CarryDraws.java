package org.bagwright.planning.outlook;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Draws of a bag's carries given what is uncertain, by a seeded Monte Carlo of {@link #DRAWS} draws; the same seed gives the
 * same draws on every machine.
 *
 * <p>Two different questions are answered. The chance of a gap is asked of the clubs' true average carries, over very many
 * shots: they are uncertain by each club's loft, by how few shots tell its average, each club on its own, and by the head
 * speed of the day, which moves all clubs of the bag together. The scatter of single shots does not enter it, since it does
 * not move an average. The band of single shots adds that scatter. Carries answer in a straight line to loft and speed with
 * the slopes at the planned setting. The chance has a standard error of at most 1.2 percent points.
 */
final class CarryDraws {
    static final int DRAWS = 2000;

    private static final double BAND_EDGE_RATIO = 0.1;

    private final double[][] averagesM;
    private final double[][] shotsM;

    /**
     * Draws.
     *
     * @param clubs the clubs, each on its own but for the speed of the day
     * @param daySpeedRatio spread of the day's head speed as a share of the usual one
     * @param seed the seed
     */
    CarryDraws(List<Uncertain> clubs, double daySpeedRatio, long seed) {
        this.averagesM = new double[clubs.size()][DRAWS];
        this.shotsM = new double[clubs.size()][DRAWS];
        Normals normals = new Normals(seed);
        for (int draw = 0; draw < DRAWS; draw++) {
            double dayRatio = daySpeedRatio * normals.next();
            for (int index = 0; index < clubs.size(); index++) {
                Uncertain club = clubs.get(index);
                averagesM[index][draw] = club.carryM()
                        + club.perSpeedRatioM() * dayRatio
                        + club.perLoftDegM() * club.loftDeg() * normals.next()
                        + club.averageM() * normals.next();
                shotsM[index][draw] = averagesM[index][draw] + club.shotM() * normals.next();
            }
        }
        Arrays.stream(shotsM).forEach(Arrays::sort);
    }

    /** The share of draws, 0 to 1, in which the gap from one club to another is inside its limits, ends included. */
    double chanceRatio(int from, int to, double leastM, double mostM) {
        int inside = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            double gapM = averagesM[from][draw] - averagesM[to][draw];
            inside += gapM >= leastM && gapM <= mostM ? 1 : 0;
        }
        return (double) inside / DRAWS;
    }

    /** The carry that nine in ten shots exceed, m. */
    double lowM(int club) {
        return shotsM[club][(int) Math.round(BAND_EDGE_RATIO * (DRAWS - 1))];
    }

    /** The carry that one in ten shots exceed, m. */
    double highM(int club) {
        return shotsM[club][(int) Math.round((1 - BAND_EDGE_RATIO) * (DRAWS - 1))];
    }

    /** Standard normal numbers by the polar method, with arithmetic that is the same on every machine. */
    private static final class Normals {
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
    }
}
