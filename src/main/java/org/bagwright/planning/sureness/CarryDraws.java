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
    private final Map<Club, Integer> clubs = new HashMap<>();
    private final int[] clubOfOption;
    private final int clubOfToday;

    CarryDraws(Chain chain, long seed) {
        this.chain = chain;
        this.normals = new Normals(seed);
        this.certainM2 = new double[chain.size()];
        this.clubOfToday = chain.longestToday().map(this::club).orElse(0);
        this.clubOfOption = new int[chain.size()];
        Arrays.setAll(clubOfOption, number -> club(chain.option(number)));
    }

    /** A number for the club of an option; the same for each of its options. */
    private int club(ChainOption option) {
        return option.flies() ? clubs.computeIfAbsent(option.option().club(), any -> clubs.size()) : 0;
    }

    /** The next world, in which nothing is left unknown. */
    World next() {
        double[] shared = normals.next(CarryDoubt.SHARED);
        double[][] own = new double[clubs.size()][];
        double todayM = chain.longestToday()
                .map(today -> carryM(today, shared, own, clubOfToday))
                .orElse(Double.NaN);
        double[] carriesM = new double[chain.size()];
        Arrays.setAll(carriesM, number -> carryM(chain.option(number), shared, own, clubOfOption[number]));
        return chain.world(carriesM, certainM2, todayM, World.GapDoubt.NONE);
    }

    private double carryM(ChainOption option, double[] shared, double[][] own, int club) {
        if (!option.flies()) {
            return Double.NaN;
        }
        CarryDoubt doubt = option.doubt();
        if (own[club] == null) {
            own[club] = normals.next(doubt.ownCount());
        }
        double carryM = option.carryM();
        for (int factor = 0; factor < shared.length; factor++) {
            carryM += doubt.sharedM(factor) * shared[factor];
        }
        for (int factor = 0; factor < own[club].length; factor++) {
            carryM += doubt.ownM(factor) * own[club][factor];
        }
        return carryM;
    }
}
