package org.bagwright.badbooks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.bagwright.search.BagSearch;
import org.bagwright.search.model.SearchLimits;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A short version of the table of numbers in {@code src/docs/numeric-hunt.md}: no factor 2 and no wrong sign passes in silence. */
@Tag("regression")
class NumericHuntTest {
    private static final List<HuntChange> CHANGES = List.of(HuntChange.DOUBLE, HuntChange.SIGN);

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "trio, Driver speed; Loft; Lie; Length; Clock; Bend; Head speed; Ball speed; Launch; Spin; Carry",
        "filled, Shaft lean; Loft change; Lie change; Lie target; Carry target; Head mass; Shaft mass"
    })
    void largeChange_isTold(String name, String columns) throws IOException {
        Set<String> hunted = Set.of(columns.split("; "));
        List<String> silent = new ArrayList<>();
        int large = 0;
        try (HuntBook book = new HuntBook(name, folder, new BagSearch(new SearchLimits(1, 5)))) {
            for (HuntBook.Place place : book.places(1)) {
                for (HuntChange change : hunted.contains(place.column()) ? CHANGES : List.<HuntChange>of()) {
                    HuntTry tried = book.run(place, change);
                    large += tried.told() == HuntTry.Told.REFUSED || tried.isLarge() ? 1 : 0;
                    if (tried.isSilent()) {
                        silent.add(tried.line());
                    }
                }
            }
        }
        assertEquals(List.of(), silent);
        assertTrue(large > hunted.size() / 2, "the changes matter");
    }
}
