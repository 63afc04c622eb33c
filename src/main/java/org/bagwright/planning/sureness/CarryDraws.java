package org.bagwright.planning.sureness;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.CarryDoubt;

/**
 * Worlds that are as likely as what is known of the golfer: each carry is its best guess and its factors times normal
 * numbers, the shared ones for the whole bag and the own ones for each club. The same seed gives the same worlds.
 */
final class CarryDraws {
    private final Chain chain;
    private final Normals normals;
    private final double[] certainM2;

    CarryDraws(Chain chain, long seed) {
        this.chain = chain;
        this.normals = new Normals(seed);
        this.certainM2 = new double[chain.size()];
    }

    /** The next world, in which nothing is left unknown. */
    World next() {
        double[] shared = normals.next(CarryDoubt.SHARED);
        Map<Club, double[]> own = new HashMap<>();
        double todayM =
                chain.longestToday().map(today -> carryM(today, shared, own)).orElse(Double.NaN);
        double[] carriesM = new double[chain.size()];
        Arrays.setAll(carriesM, number -> carryM(chain.option(number), shared, own));
        return chain.world(carriesM, certainM2, todayM, World.GapDoubt.NONE);
    }

    private double carryM(ChainOption option, double[] shared, Map<Club, double[]> own) {
        if (!option.flies()) {
            return Double.NaN;
        }
        CarryDoubt doubt = option.doubt();
        double[] ofClub = own.computeIfAbsent(option.option().club(), club -> normals.next(doubt.ownCount()));
        double carryM = option.carryM();
        for (int factor = 0; factor < shared.length; factor++) {
            carryM += doubt.sharedM(factor) * shared[factor];
        }
        for (int factor = 0; factor < ofClub.length; factor++) {
            carryM += doubt.ownM(factor) * ofClub[factor];
        }
        return carryM;
    }
}
