package org.bagwright.sessions;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToLongFunction;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.bagwright.domain.session.PlainTable;

/** Text whose cells are separated by a comma, a semicolon or a tab, whichever makes a table of shots of it. */
final class SeparatedText {
    static final int MOST_ROWS = 50_000;
    private static final int MOST_CELL_CHARS = 1_000;
    private static final List<Character> SEPARATORS = List.of(',', ';', '\t');

    private final TextFile file;
    private final String text;

    SeparatedText(TextFile file) throws SessionFileException {
        this.file = file;
        this.text = file.text();
    }

    /**
     * The table.
     *
     * @param known how many headings of a table are understood
     */
    PlainTable table(ToLongFunction<PlainTable> known) throws SessionFileException {
        Optional<PlainTable> best = Optional.empty();
        long most = -1;
        Optional<SessionFileException> failed = Optional.empty();
        for (char separator : SEPARATORS) {
            try {
                PlainTable table = separatedBy(separator);
                long count = known.applyAsLong(table);
                if (count > most) {
                    most = count;
                    best = Optional.of(table);
                }
            } catch (SessionFileException wrong) {
                failed = Optional.of(wrong);
            }
        }
        if (failed.isPresent() && most <= 0) {
            throw failed.get();
        }
        return best.orElseThrow();
    }

    private PlainTable separatedBy(char separator) throws SessionFileException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .setTrailingData(true)
                .get();
        List<PlainTable.Row> rows = new ArrayList<>();
        int line = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord found : parser) {
                rows.add(row(line, found));
                line = (int) parser.getCurrentLineNumber() + 1;
                if (rows.size() > MOST_ROWS) {
                    throw file.bad("the file has more than " + MOST_ROWS + " rows; split it.");
                }
            }
        } catch (CSVException | UncheckedIOException broken) {
            throw unclosed(line);
        } catch (IOException broken) {
            throw unclosed(line);
        }
        return new PlainTable(file.name(), rows);
    }

    private SessionFileException unclosed(int line) {
        return file.bad("a quoted cell that begins on line " + line + " or below it is not closed.");
    }

    private PlainTable.Row row(int line, CSVRecord found) throws SessionFileException {
        List<String> cells = new ArrayList<>(found.size());
        for (String cell : found) {
            if (cell.length() > MOST_CELL_CHARS) {
                throw file.bad("a cell on line " + line + " is longer than " + MOST_CELL_CHARS
                        + " characters; maybe a quotation mark is not closed.");
            }
            cells.add(cell);
        }
        return new PlainTable.Row(line, cells);
    }
}
