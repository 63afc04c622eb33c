package org.bagwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** DEVELOPERS.md names only files that exist. */
@Tag("regression")
class DevelopersPageTest {
    private static final Pattern NAMED =
            Pattern.compile("`((?:[\\w.-]+/)+[\\w.-]+|[\\w.-]+\\.(?:md|xml|sh|css|java))`");
    private static final List<Path> ROOTS = List.of(
            Path.of(""),
            Path.of("src", "main", "java", "org", "bagwright"),
            Path.of("src", "tools", "java", "org", "bagwright"),
            Path.of("src", "test", "java", "org", "bagwright"));

    @Test
    void everyFileNamed_exists() throws IOException {
        List<String> named = NAMED.matcher(Files.readString(Path.of("DEVELOPERS.md")))
                .results()
                .map((MatchResult found) -> found.group(1))
                .filter(name -> !name.startsWith("target/"))
                .toList();
        List<String> missing = named.stream()
                .filter(name -> ROOTS.stream().noneMatch(root -> Files.exists(root.resolve(name))))
                .toList();
        assertTrue(named.size() > 40, named.size() + " files named");
        assertEquals(List.of(), missing);
    }
}
