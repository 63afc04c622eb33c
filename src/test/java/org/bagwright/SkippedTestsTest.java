package org.bagwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.opentest4j.AssertionFailedError;
import org.opentest4j.TestAbortedException;

/** No test is left out in CI without a word. */
@Tag("regression")
class SkippedTestsTest {
    private static final String SKIPS =
            "org\\.junit\\.jupiter\\.api\\.(Assumptions|Disabled|condition\\.(En|Dis)abled.*)"
                    + "|org\\.opentest4j\\.TestAborted.*";

    @Test
    void whatIsMissing_failsInCiAndSkipsElsewhere() {
        assertThrows(AssertionFailedError.class, () -> Needed.here(false, "a program", true));
        assertThrows(TestAbortedException.class, () -> Needed.here(false, "a program", false));
        assertDoesNotThrow(() -> Needed.here(true, "a program", true));
        assertDoesNotThrow(() -> Needed.here(true, "a program", false));
    }

    @Test
    void skipping_isLeftToNeeded() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName(Needed.class.getName())
                .and()
                .doNotHaveFullyQualifiedName(SkippedTestsTest.class.getName())
                .should()
                .dependOnClassesThat()
                .haveNameMatching(SKIPS)
                .check(new ClassFileImporter().importPackages("org.bagwright"));
    }
}
