package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import org.apache.poi.ss.util.CellReference;
import org.bagwright.domain.book.Message;
import org.bagwright.workbook.TestBook.Formula;
import org.bagwright.workbook.TestBook.Shown;
import org.bagwright.workbook.read.BookReader;

@Tag("analytic")
class AnyCellTest {
    @Property(tries = 100)
    void anythingInAnyCell_neverThrowsAndGivesABookExactlyWithoutProblems(
            @ForAll("places") String first,
            @ForAll("values") Object one,
            @ForAll("places") String second,
            @ForAll("values") Object other) {
        BookReader.Result result =
                KitBook.sound().set(first, one).set(second, other).read();
        List<String> problems = result.messages().stream()
                .filter(message -> message.severity() == Message.Severity.PROBLEM)
                .map(Message::cell)
                .toList();
        assertEquals(problems.isEmpty(), result.book().isPresent(), () -> "messages " + result.messages());
        assertEquals(problems.size(), problems.stream().distinct().count(), "no cell twice");
        result.messages().forEach(message -> assertTrue(message.text().length() > 1));
    }

    @Provide
    Arbitrary<String> places() {
        Arbitrary<String> sheets =
                Arbitraries.of("Start", "Golfers", "Clubs", "Sleeves", "Shots", "Weights", "Stock", "Aims");
        Arbitrary<Integer> rows = Arbitraries.integers().between(0, 5);
        Arbitrary<Integer> columns = Arbitraries.integers().between(0, 12);
        return Combinators.combine(sheets, rows, columns)
                .as((sheet, row, column) -> sheet + "!" + new CellReference(row, column).formatAsString());
    }

    @Provide
    Arbitrary<Object> values() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(-1e6, 1e6).map(value -> value),
                Arbitraries.of(-1.0, 0.0, 1e-300, 1e300, 12.0, 0.5).map(value -> value),
                Arbitraries.strings().withCharRange(' ', '~').ofMaxLength(12).map(value -> value),
                Arbitraries.of(
                                "",
                                " ",
                                "\u00a0",
                                "1/2",
                                "200/250",
                                "yes",
                                "Two degree",
                                "Front: 12",
                                "12 g",
                                "D2",
                                "58\u00b0",
                                "-",
                                "()",
                                "[in]")
                        .map(value -> value),
                Arbitraries.of(true, false).map(value -> value),
                Arbitraries.of("1/0", "NA()", "A1", "\"\"", "1+1", "1<2").map(Formula::new),
                Arbitraries.of(0.0625, 0.9, 45123.0).map(value -> new Shown(value, "h:mm")));
    }
}
