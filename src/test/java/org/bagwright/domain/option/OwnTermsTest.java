package org.bagwright.domain.option;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("analytic")
class OwnTermsTest {
    /** Each term is another power of two, so no other sum of them gives the same. */
    @Test
    void total_isTheSumOfAllTerms() {
        assertEquals(63, new OwnTerms(1, 2, 4, 8, 16, 32, 1000).totalPoints());
    }
}
