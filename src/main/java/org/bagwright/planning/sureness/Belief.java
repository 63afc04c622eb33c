package org.bagwright.planning.sureness;

import java.util.Arrays;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Club;

/** What is expected of a chain and how far that may be off, and what would be expected after a measurement. */
final class Belief {
    private final Chain chain;
    private final double[] carriesM;
    private final double[] variancesM2;
    private final double[][] gapVariancesM2;

    Belief(Chain chain) {
        this.chain = chain;
        this.carriesM = new double[chain.size()];
        this.variancesM2 = new double[chain.size()];
        Arrays.setAll(carriesM, number -> chain.option(number).carryM());
        Arrays.setAll(variancesM2, number -> chain.option(number).doubt().varianceM2());
        this.gapVariancesM2 = new double[chain.size()][chain.size()];
        for (int from = 0; from < chain.size(); from++) {
            for (int to = from + 1; to < chain.size(); to++) {
                gapVariancesM2[from][to] = chain.option(from)
                        .doubt()
                        .gapVarianceM2(chain.option(to).doubt());
            }
        }
    }

    /** The world at the best guess. */
    World expected() {
        return chain.world(carriesM, variancesM2, todayM(), (from, to) -> gapVariancesM2[from][to]);
    }

    private double todayM() {
        return chain.longestToday().map(ChainOption::carryM).orElse(Double.NaN);
    }

    /**
     * The world after shots with an option of the bag.
     *
     * @param hit the option, in the chain or not
     * @param noiseM2 the variance of the average of the shots about the true average, m2
     * @param outcome how the shots come out, standard deviations from what is expected
     */
    World afterShots(ChainOption hit, double noiseM2, double outcome) {
        double outcomeSdM = Math.sqrt(hit.doubt().varianceM2() + noiseM2);
        double[] movesM = new double[chain.size()];
        double[] movedM = new double[chain.size()];
        double[] leftM2 = new double[chain.size()];
        for (int number = 0; number < movesM.length; number++) {
            movesM[number] = chain.option(number).covarianceM2(hit) / outcomeSdM;
            movedM[number] = carriesM[number] + outcome * movesM[number];
            leftM2[number] = variancesM2[number] - movesM[number] * movesM[number];
        }
        double todayMoveM = chain.longestToday()
                .map(today -> today.covarianceM2(hit) / outcomeSdM)
                .orElse(0.0);
        return chain.world(movedM, leftM2, todayM() + outcome * todayMoveM, (from, to) -> {
            double apartM = movesM[from] - movesM[to];
            return gapVariancesM2[from][to] - apartM * apartM;
        });
    }

    /**
     * The world after a gauge reading.
     *
     * @param club the club that is read
     * @param measure its loft or its lie
     * @param moveDeg how far the reading moves what is expected of it, degrees
     */
    World afterReading(Club club, Measure measure, double moveDeg) {
        World after = expected();
        for (int number = 0; number < chain.size(); number++) {
            after.addPoints(number, readPoints(chain.option(number), club, measure, moveDeg));
        }
        return after;
    }

    private double readPoints(ChainOption option, Club club, Measure measure, double moveDeg) {
        Aim aim = option.aims().of(measure);
        return option.option()
                .setup()
                .filter(made -> made.club().equals(club))
                .map(made -> made.deviations().get(measure))
                .map(offDeg -> aim.penaltyPoints(offDeg + moveDeg) - aim.penaltyPoints(offDeg))
                .orElse(0.0);
    }
}
