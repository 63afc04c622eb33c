package org.bagwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Tools and tests are compiled together; still the tools must do without the tests. */
@Tag("regression")
class ToolsTest {
    @Test
    void tools_useNoTest() throws IOException {
        Set<String> tools = sources("tools");
        Set<String> tests = sources("test");
        assertTrue(tools.size() > 50 && tests.size() > 100, tools.size() + " tools, " + tests.size() + " tests");
        noClasses()
                .that(areOf("tools", tools))
                .should()
                .dependOnClassesThat(areOf("tests", tests))
                .check(new ClassFileImporter().importPackages("org.bagwright"));
    }

    /** The names of the classes under a source root. */
    private static Set<String> sources(String root) throws IOException {
        Path folder = Path.of("src", root, "java");
        try (Stream<Path> files = Files.walk(folder)) {
            return files.map(file -> folder.relativize(file).toString())
                    .filter(name -> name.endsWith(".java"))
                    .map(name -> name.replace(".java", "").replaceAll("[/\\\\]", "."))
                    .collect(Collectors.toSet());
        }
    }

    private static DescribedPredicate<JavaClass> areOf(String root, Set<String> names) {
        return DescribedPredicate.describe(
                "are " + root, type -> names.contains(type.getName().replaceAll("\\$.*", "")));
    }
}
