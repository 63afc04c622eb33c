package org.bagwright.search;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.planning.Charting;
import org.bagwright.planning.WorkbookProblems;
import org.bagwright.search.model.SearchLimits;

/**
 * Times the whole search of books, which are the arguments, after a warm-up; and the same without the exact search, which
 * shows how near the local search comes by itself. Run by hand.
 */
public final class SearchTimes {
    private static final int RUNS = 20;
    private static final SearchLimits LIMITS = new SearchLimits(1, 600);

    private SearchTimes() {}

    public static void main(String[] args) throws IOException, WorkbookProblems {
        for (String book : args) {
            BookOptions options = new Charting(Path.of(book)).chart().options();
            System.out.println(book + ": " + times(options, LIMITS));
            System.out.println(book + ", no exact search: " + times(options, LIMITS.withoutExact()));
        }
    }

    private static String times(BookOptions options, SearchLimits limits) {
        double points = 0;
        boolean proven = false;
        List<Double> timesS = new ArrayList<>();
        for (int run = 0; run < 2 * RUNS; run++) {
            long startNs = System.nanoTime();
            var plan = new BagSearch(limits).plan(options);
            timesS.add((System.nanoTime() - startNs) / 1e9);
            points = plan.bags().stream()
                    .mapToDouble(bag -> bag.score().penaltyPoints())
                    .sum();
            proven = plan.proven();
        }
        List<Double> warmS = new ArrayList<>(timesS.subList(RUNS, 2 * RUNS));
        Collections.sort(warmS);
        return String.format(
                Locale.ROOT,
                "%.6f points%s, first run %.3f s, warm median %.3f s, worst %.3f s",
                points,
                proven ? ", proven" : "",
                timesS.get(0),
                warmS.get(RUNS / 2),
                warmS.get(RUNS - 1));
    }
}
