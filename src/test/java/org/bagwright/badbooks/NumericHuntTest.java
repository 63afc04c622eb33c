package org.bagwright.badbooks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bagwright.search.BagSearch;
import org.bagwright.search.model.SearchLimits;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A short version of the table of numbers in {@code src/docs/numeric-hunt.md}: no large change is silent without a reason. */
@Tag("regression")
class NumericHuntTest {
    private static final List<HuntChange> CHANGES = List.of(HuntChange.TENTH, HuntChange.DOUBLE, HuntChange.SIGN);

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"trio", "filled"})
    void largeChange_isTold(String name) throws IOException {
        List<String> silent = new ArrayList<>();
        try (HuntBook book = new HuntBook(name, folder, new BagSearch(new SearchLimits(1, 5)))) {
            for (HuntBook.Place place : book.places(1)) {
                for (HuntChange change : CHANGES) {
                    HuntTry tried = book.run(place, change);
                    if (tried.isSilent() && HuntReason.of(tried) == HuntReason.NONE) {
                        silent.add(tried.line());
                    }
                }
            }
        }
        assertEquals(List.of(), silent);
    }
}
