package org.bagwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is committed of the manual is what the program says today; {@link Manual} makes it. */
@Tag("regression")
class ManualTest {
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:]+)\\)");
    private static final Pattern PICTURE = Pattern.compile("\\(pictures/([a-z0-9-]+\\.(?:png|svg))\\)");
    private static final Pattern SCRIPTED = Pattern.compile("(?m)^picture [^#\\n]* ([a-z0-9-]+)$");
    private static final Path PICTURES = ManualChapter.FOLDER.resolve("pictures");

    @TempDir
    Path folder;

    static List<ManualChapter> chapters() throws IOException {
        return ManualChapter.all();
    }

    @ParameterizedTest
    @MethodSource("chapters")
    void commandsRunInOrder_printWhatIsShown(ManualChapter chapter) {
        assertEquals(chapter.text(), Manual.made(chapter, folder).text());
    }

    @ParameterizedTest
    @MethodSource("chapters")
    void everyLineToType_isRun(ManualChapter chapter) {
        long lines = chapter.text()
                .lines()
                .filter(line -> line.strip().startsWith("$ "))
                .count();
        long run = chapter.deeds().stream()
                .filter(ManualDeed.Typed.class::isInstance)
                .count();
        assertEquals(lines, run);
    }

    @Test
    void everyCommandThatReadsOrWritesBooks_isShown() throws IOException {
        Set<String> shown = ManualChapter.all().stream()
                .flatMap(chapter -> chapter.deeds().stream())
                .filter(ManualDeed.Typed.class::isInstance)
                .map(deed -> ((ManualDeed.Typed) deed).words().get(0))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of("add-shots", "demo", "new", "check", "chart", "gauge", "plan", "compare", "page"), shown);
    }

    @Test
    void everyLink_leadsToAFile() throws IOException {
        for (Path page : pages()) {
            for (MatchResult link :
                    LINK.matcher(Files.readString(page)).results().toList()) {
                Path target = page.resolveSibling(link.group(1));
                assertTrue(Files.exists(target), page + " links to " + link.group(1));
            }
        }
    }

    @Test
    void everyChapter_isListed() throws IOException {
        String list = Files.readString(ManualChapter.FOLDER.resolve("README.md"));
        for (ManualChapter chapter : ManualChapter.all()) {
            assertTrue(list.contains("](" + chapter.name() + ")"), chapter.name());
        }
    }

    @Test
    void picturesShownMadeAndKept_areTheSame() throws IOException {
        Set<String> shown = new TreeSet<>();
        for (Path page : pages()) {
            PICTURE.matcher(Files.readString(page)).results().forEach(found -> shown.add(found.group(1)));
        }
        String script = Files.readString(ManualChapter.FOLDER.resolve("pictures.sh"));
        Set<String> made = SCRIPTED.matcher(script)
                .results()
                .map(found -> found.group(1) + ".png")
                .collect(Collectors.toCollection(TreeSet::new));
        made.add("chances.svg"); // drawn by ChancesPicture
        made.add("page.png"); // drawn by PagePictures
        assertFalse(shown.isEmpty());
        assertEquals(shown, made);
        try (Stream<Path> kept = Files.list(PICTURES)) {
            assertEquals(
                    shown,
                    kept.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new)));
        }
    }

    @Test
    void picturesTogether_staySmall() throws IOException {
        long total = 0;
        try (Stream<Path> kept = Files.list(PICTURES)) {
            for (Path picture : kept.toList()) {
                total += Files.size(picture);
            }
        }
        assertTrue(total < 1_500_000, total + " bytes");
    }

    @Test
    void lineThatIsNotPrinted_isMadeAnew() {
        List<String> printed = List.of("first", "second line 2", "third", "took 0.4 s");
        assertEquals(printed, ManualRun.shown(List.of(), printed));
        assertEquals(printed, ManualRun.shown(List.of("first", "third"), printed));
        assertEquals(
                List.of("...", "second line 2", "...", "took 0.9 s"),
                ManualRun.shown(List.of("...", "second line 9", "...", "took 0.9 s"), printed));
        assertEquals(List.of("first", "..."), ManualRun.shown(List.of("first", "..."), printed));
    }

    private static List<Path> pages() throws IOException {
        try (Stream<Path> files = Files.list(ManualChapter.FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }
}
