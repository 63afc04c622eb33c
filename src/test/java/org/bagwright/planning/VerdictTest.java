package org.bagwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.plan.BookPlan;
import org.bagwright.search.BagSearch;
import org.bagwright.search.model.SearchLimits;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The demo books with and without the exact search: what is proven, what is only found, and how near that is. */
@Tag("analytic")
class VerdictTest {
    private static final SearchLimits LIMITS = new SearchLimits(1, 600);

    private static double points(BookPlan plan) {
        return plan.bags().stream()
                .mapToDouble(bag -> bag.score().penaltyPoints())
                .sum();
    }

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void planOfADemo_withoutTheExactSearchIsWithinOnePercentAndUnproven(String demo) throws Exception {
        BookOptions book =
                new Charting(Path.of("demo-data", demo + ".xlsx")).chart().options();
        BookPlan proven = new BagSearch(LIMITS).plan(book);
        BookPlan found = new BagSearch(LIMITS.withoutExact()).plan(book);
        assertTrue(proven.proven());
        assertFalse(found.proven());
        assertEquals(0, found.bounds().penaltyPoints(), "no exact search, no bound");
        assertTrue(points(found) <= 1.01 * points(proven), points(found) + " against " + points(proven));
    }
}
