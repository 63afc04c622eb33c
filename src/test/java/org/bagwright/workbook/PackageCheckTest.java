package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bagwright.cli.text.Terminal;
import org.bagwright.workbook.pen.RichBook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No book of the tool's own making gives a spreadsheet program a reason to repair it: parts, and published schema. */
@Tag("analytic")
class PackageCheckTest {
    /** These follow schemas that the library does not hold. */
    private static final List<String> OTHER_SCHEMA = List.of("docProps/core.xml");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"trio", "full", "team"})
    void demo_isSoundBeforeAndAfterItsPlan(String demo) throws Exception {
        RoundTripTest.done("demo", demo, "-o", folder);
        requireSound(folder.resolve(demo + ".xlsx"));
        requireSound(folder.resolve(demo + "-plan.xlsx"));
    }

    @Test
    void blankBookComparedBooksAndGaugedBook_areSound() throws Exception {
        Path blank = folder.resolve("new.xlsx");
        RoundTripTest.done("new", blank);
        requireSound(blank);
        Path bag = RichBook.plain(folder.resolve("bag.xlsx"));
        RoundTripTest.done("gauge", bag, "--write");
        requireSound(folder.resolve("bag-gauged.xlsx"));
        Path compared = folder.resolve("compared.xlsx");
        RoundTripTest.done("compare", bag, folder.resolve("bag-gauged.xlsx"), "-o", compared);
        requireSound(compared);
    }

    private static void requireSound(Path book) throws Exception {
        assertEquals(List.of(), PackageCheck.problems(book), book.getFileName().toString());
        BookPackage file = BookPackage.of(book);
        List<String> parts = file.contents().stream()
                .filter(part -> part.endsWith(".xml") && !OTHER_SCHEMA.contains(part))
                .toList();
        assertTrue(parts.size() >= 5, parts.toString());
        assertEquals(
                List.of(),
                PackageCheck.schemaProblems(book, parts),
                book.getFileName().toString());
    }

    /** Each flaw put into a sound book is found, and by its own words. */
    @Test
    void flaws_areFound() throws Exception {
        Path book = RichBook.plain(folder.resolve("flawed.xlsx"));
        assertEquals(List.of(), PackageCheck.problems(book));
        String clubs = BookPackage.of(book).sheet("Clubs");
        new PartEditor(book)
                .replace(clubs, "r=\"B2\"", "r=\"A2\"")
                .replace(clubs, "<sheetData>", "<cols/><sheetData>")
                .replace("xl/workbook.xml", "sheetId=\"2\"", "sheetId=\"1\"")
                .put("xl/lost.xml", "<lost/>")
                .relate(clubs, "rId1", PartEditor.OFFICE + "/drawing", "../drawings/none.xml")
                .write();
        List<String> found = PackageCheck.problems(book);
        for (String flaw : List.of(
                "has A2 twice",
                "Golfers has the id of another sheet",
                "lost.xml is an orphan",
                "leads to xl/drawings/none.xml, which is not there")) {
            assertTrue(found.stream().anyMatch(one -> one.contains(flaw)), flaw + " in " + found);
        }
        assertEquals(1, PackageCheck.schemaProblems(book, List.of(clubs)).size());
        assertEquals(
                3, Terminal.run("plan", book, "-o", folder.resolve("no.xlsx")).code());
    }

    @Test
    void longListFormulaAndName_areFound() throws Exception {
        Path book = RichBook.plain(folder.resolve("long.xlsx"));
        String clubs = BookPackage.of(book).sheet("Clubs");
        String list = Stream.generate(() -> "club").limit(60).reduce("", (all, one) -> all + "," + one);
        new PartEditor(book)
                .edit(
                        clubs,
                        xml -> xml.replace(
                                "<pageMargins",
                                "<dataValidations><dataValidation type=\"list\" sqref=\"A9\"><formula1>\"" + list
                                        + "\"</formula1></dataValidation></dataValidations><pageMargins"))
                .edit(
                        clubs,
                        xml -> xml.replaceFirst(
                                "(<c r=\"A2\"[^>]*>)", "$1<f>" + "(".repeat(70) + "1" + ")".repeat(70) + "</f>"))
                .replace(
                        "xl/workbook.xml",
                        "</sheets>",
                        "</sheets><definedNames><definedName name=\"AB12\">Clubs!#REF!</definedName></definedNames>")
                .write();
        List<String> found = PackageCheck.problems(book);
        for (String flaw :
                List.of("too long a list", "too deep a formula", "AB12 is no defined name", "AB12 leads nowhere")) {
            assertTrue(found.stream().anyMatch(one -> one.contains(flaw)), flaw + " in " + found);
        }
    }
}
