package org.bagwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** What is committed of the page is what the code makes today; {@link WhyPage} makes it. */
@Tag("regression")
class WhyPageTest {
    private static final Pattern DECIMAL = Pattern.compile("\\d+\\.\\d+");
    private static final Pattern PICTURE = Pattern.compile("\\(pictures/([a-z0-9.-]+)\\)");

    /** What the page takes as given: the driver's loft, its bend, half that bend, and the number of a rule. */
    private static final Set<String> GIVEN = Set.of("9.5", "1.70", "0.85", "4.1");

    @ParameterizedTest
    @MethodSource("pictures")
    void kept_picture_is_what_the_code_draws(String file) throws IOException {
        String drawn = Pictures.byFile().get(file).get().written();
        assertEquals(drawn, read(WhyPage.PICTURES.resolve(file)));
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void words_of_a_picture_stand_inside_it_and_apart(String file) {
        assertEquals(List.of(), Pictures.byFile().get(file).get().clashes());
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void kept_picture_is_sound_xml(String file) throws IOException, SAXException, ParserConfigurationException {
        String text = read(WhyPage.PICTURES.resolve(file));
        var document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(text)));
        assertEquals("svg", document.getDocumentElement().getTagName());
    }

    @Test
    void page_shows_every_kept_picture_and_no_other() throws IOException {
        Set<String> kept;
        try (Stream<Path> files = Files.list(WhyPage.PICTURES)) {
            kept = files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
        assertEquals(kept, found(PICTURE));
        assertEquals(kept, new TreeSet<>(Pictures.byFile().keySet()));
    }

    @Test
    void kept_numbers_are_what_the_geometry_gives() throws IOException {
        String page = read(WhyPage.PAGE);
        assertEquals(WhyPage.filled(page), page);
    }

    @Test
    void every_number_is_used() throws IOException {
        Set<String> used = WhyPage.BLOCK
                .matcher(read(WhyPage.PAGE))
                .results()
                .map(block -> block.group(2))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(WhyNumbers.byName().keySet()), used);
    }

    @Test
    void no_computed_number_stands_outside_a_block() throws IOException {
        String plain = WhyPage.BLOCK.matcher(read(WhyPage.PAGE)).replaceAll("");
        Set<String> decimals =
                DECIMAL.matcher(plain).results().map(MatchResult::group).collect(Collectors.toSet());
        decimals.removeAll(GIVEN);
        assertEquals(Set.of(), decimals);
    }

    /** Markdown takes a line that begins with a comment as bare HTML and would leave the rest of it unformatted. */
    @Test
    void no_line_of_text_begins_with_a_comment() throws IOException {
        Pattern comments = Pattern.compile("<!-- (numbers: [a-z0-9-]+|end) -->");
        List<String> lines = read(WhyPage.PAGE)
                .lines()
                .filter(line -> line.startsWith("<!--"))
                .toList();
        assertTrue(lines.size() >= 6, "the page has lost its tables");
        for (String line : lines) {
            assertTrue(comments.matcher(line).matches(), line);
        }
    }

    static Set<String> pictures() {
        return Pictures.byFile().keySet();
    }

    private static Set<String> found(Pattern pattern) throws IOException {
        return pattern.matcher(read(WhyPage.PAGE))
                .results()
                .map(match -> match.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String read(Path file) throws IOException {
        return Files.readString(file).replace("\r\n", "\n");
    }
}
