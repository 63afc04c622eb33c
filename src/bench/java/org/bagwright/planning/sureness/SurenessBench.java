package org.bagwright.planning.sureness;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.planning.Planning;

/**
 * How long it takes on one thread, warm, to tell how sure the bags of a book are and what to measure next, with the usual
 * doubts in all carries. Arguments: book files.
 */
public final class SurenessBench {
    private static final int RUNS = 30;

    private SurenessBench() {}

    public static void main(String[] files) throws Exception {
        System.out.println("| book | golfer | options | shares, ms | advice, ms |");
        System.out.println("|---|---|---|---|---|");
        for (String file : files) {
            BookResult result = new Planning(1, 10).plan(Path.of(file));
            for (BagResult bag : result.bags()) {
                time(file, bag.options(), bag);
                time(file + ", 5 changes", bag.options().withMostChanges(OptionalInt.of(5)), bag);
            }
        }
    }

    private static void time(String file, BagOptions options, BagResult bag) {
        BagOptions doubted = new DoubtedBag(options).withUsualDoubts();
        List<Integer> planned = bag.planned().chosen();
        BagSureness sureness = new BagSureness(doubted, planned);
        long sharesNs = 0;
        long adviceNs = 0;
        for (int run = 0; run < RUNS; run++) {
            long startNs = System.nanoTime();
            sureness.choices(1);
            long betweenNs = System.nanoTime();
            sureness.measureNext(club -> false);
            long endNs = System.nanoTime();
            sharesNs = run == RUNS - 1 ? betweenNs - startNs : 0;
            adviceNs = run == RUNS - 1 ? endNs - betweenNs : 0;
        }
        long count = options.slots().stream()
                .mapToLong(slot -> slot.options().size())
                .sum();
        System.out.println(String.format(
                Locale.ROOT,
                "| %s | %s | %d | %.0f | %.0f |",
                Path.of(file).getFileName(),
                bag.golfer().name(),
                count,
                sharesNs / 1e6,
                adviceNs / 1e6));
    }
}
