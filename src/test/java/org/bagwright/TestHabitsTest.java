package org.bagwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.Set;
import org.bagwright.cli.Main;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.opentest4j.AssertionFailedError;
import org.opentest4j.TestAbortedException;

/** No test is left out in CI without a word, and none disturbs the one that runs next to it. */
@Tag("regression")
class TestHabitsTest {
    private static final JavaClasses ALL = new ClassFileImporter().importPackages("org.bagwright");

    private static final String SKIPS =
            "org\\.junit\\.jupiter\\.api\\.(Assumptions|Disabled|condition\\.(En|Dis)abled.*)"
                    + "|org\\.opentest4j\\.TestAborted.*";

    private static final Set<String> SHARED = Set.of(
            "System.setOut",
            "System.setErr",
            "System.setIn",
            "System.setProperty",
            "System.setProperties",
            "System.clearProperty",
            "Locale.setDefault",
            "TimeZone.setDefault");

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
                .doNotHaveFullyQualifiedName(TestHabitsTest.class.getName())
                .should()
                .dependOnClassesThat()
                .haveNameMatching(SKIPS)
                .check(ALL);
    }

    @Test
    void whatTheWholeProgramShares_isLeftAlone() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName(Main.class.getName())
                .should()
                .callMethodWhere(DescribedPredicate.describe(
                        "it sets what the whole program shares",
                        call -> SHARED.contains(call.getTargetOwner().getSimpleName() + "." + call.getName())))
                .because("two test classes run at a time in one program")
                .check(ALL);
    }
}
