package org.bagwright.dist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The lists of libraries that ship say what Maven resolves and what the libraries themselves say. */
@Tag("regression")
class ShippedLibrariesTest {
    private static final Path LICENCES = Path.of("src", "dist", "licences");

    @Test
    void thirdPartyList_isWhatShipsWithTheLicencesStated() throws Exception {
        Set<String> shipped = new TreeSet<>();
        for (ShippedLibrary library : ShippedLibrary.all()) {
            shipped.add(library.artifact() + " " + library.version() + " " + library.licence());
        }
        Set<String> listed = Files.readAllLines(LICENCES.resolve("THIRD-PARTY.txt")).stream()
                .filter(line -> line.startsWith("  "))
                .map(line -> line.strip().replaceAll(" +", " "))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(String.join("\n", shipped), String.join("\n", listed));
    }

    @Test
    void legalTextsOfEveryLibrary_standInTheFolderOfLicences() throws Exception {
        Set<String> kept = keptTexts();
        List<String> missing = new ArrayList<>();
        for (ShippedLibrary library : ShippedLibrary.all()) {
            library.legalTexts().forEach((name, text) -> {
                if (!kept.contains(text)) {
                    missing.add(library.artifact() + " " + name);
                }
            });
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void pageOfDependencies_hasEveryLibraryWithItsVersion() throws Exception {
        String page = Files.readString(Path.of("src", "docs", "dependencies.md"));
        Set<String> shipped = new TreeSet<>();
        for (ShippedLibrary library : ShippedLibrary.all()) {
            shipped.add(library.artifact() + " " + library.version());
        }
        Set<String> rows = page.lines()
                .filter(line -> line.startsWith("| `"))
                .map(line -> line.split("`")[1])
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(shipped, rows);
    }

    @Test
    void librariesLeftOut_doNotShip() throws Exception {
        List<String> artifacts =
                ShippedLibrary.all().stream().map(ShippedLibrary::artifact).toList();
        assertTrue(artifacts.contains("poi-ooxml-full"), "the list was read");
        for (String leftOut : List.of("jaxb-runtime", "jakarta.xml.bind-api", "HdrHistogram", "curvesapi")) {
            assertTrue(!artifacts.contains(leftOut), leftOut + " ships again");
        }
    }

    private static Set<String> keptTexts() throws IOException {
        try (Stream<Path> files = Files.list(LICENCES)) {
            Set<String> texts = new TreeSet<>();
            for (Path file : files.toList()) {
                texts.add(ShippedLibrary.plain(Files.readString(file)));
            }
            return texts;
        }
    }
}
