package org.bagwright.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.Aims;
import org.bagwright.domain.Book;
import org.bagwright.domain.BookSettings;
import org.bagwright.domain.Message;
import org.bagwright.domain.Reading;
import org.bagwright.domain.Shot;

/** Reads a fitter's .xlsx book into records and says everything that is wrong in it at once. */
public final class BookReader {
    /**
     * What reading gave.
     *
     * @param book the book; present exactly when there is no problem
     * @param messages everything found, problems first, each with its cell
     * @param clashes a problem for every sheet of the fitter's own that has the name of a result sheet
     */
    public record Result(Optional<Book> book, List<Message> messages, List<Message> clashes) {
        public Result {
            messages = List.copyOf(messages);
            clashes = List.copyOf(clashes);
        }
    }

    private final XSSFWorkbook workbook;
    private final Findings findings = new Findings();
    private final CellContents contents;
    private BookContext context;

    private BookReader(XSSFWorkbook workbook) {
        this.workbook = workbook;
        this.contents = new CellContents(workbook);
        this.context = new BookContext(contents, BookSettings.DEFAULT.units(), findings);
    }

    /** Reads a book. The file is read once into memory and never opened for writing; no file makes this throw. */
    public static Result read(Path file) {
        try (XSSFWorkbook workbook = BookFile.open(file)) {
            return new BookReader(workbook).read();
        } catch (UnreadableBookException unreadable) {
            return new Result(Optional.empty(), List.of(unreadable.found()), List.of());
        } catch (IOException closing) {
            throw new UncheckedIOException(closing);
        }
    }

    private Result read() {
        BookSettings settings = settings();
        context = context.in(settings.units());
        Optional<GolferReader> golfers = needed(GolferColumns.SHEET, "every golfer has a row there")
                .map(table -> GolferReader.read(table, context));
        NameIndex names = golfers.map(GolferReader::names).orElseGet(NameIndex::new);
        SleeveReader sleeves =
                table(SleeveColumns.SHEET).map(SleeveReader::read).orElseGet(SleeveReader::none);
        Optional<ClubReader> clubs = needed(ClubColumns.SHEET, "every club has a row there")
                .map(table -> ClubReader.read(table, context, names, sleeves));
        requireSleeves(clubs);
        Optional<InputTable> shotTable = optional(ShotColumns.SHEET, "shots are assumed");
        List<Shot> shots =
                shotTable.map(table -> ShotReader.read(table, names, clubs)).orElse(List.of());
        List<Reading> readings = table(ReadingColumns.SHEET)
                .map(table -> ReadingReader.read(table, names, clubs, sleeves))
                .orElse(List.of());
        Aims aims = optional(AimColumns.SHEET, "the usual tolerances and importances hold")
                .map(AimReader::read)
                .orElseGet(Aims::defaults);
        golfers.ifPresent(reader -> warnOfGolfersWithoutClubs(reader, clubs));
        warnOfUnusedSheets();
        return result(settings, aims, golfers, clubs, sleeves, shots, readings);
    }

    private Result result(
            BookSettings settings,
            Aims aims,
            Optional<GolferReader> golfers,
            Optional<ClubReader> clubs,
            SleeveReader sleeves,
            List<Shot> shots,
            List<Reading> readings) {
        List<Message> messages = findings.messages();
        if (findings.anyProblem()) {
            return new Result(Optional.empty(), messages, ResultSheets.clashes(workbook));
        }
        Book book = new Book(
                settings,
                aims,
                golfers.orElseThrow().golfers(),
                clubs.orElseThrow().clubs(),
                sleeves.sleeves(),
                List.of(),
                List.of(),
                shots,
                readings,
                clubs.orElseThrow().gauged(),
                messages);
        return new Result(Optional.of(book), messages, ResultSheets.clashes(workbook));
    }

    private BookSettings settings() {
        Optional<XSSFSheet> start = sheets().stream()
                .filter(sheet -> CloseNames.key(sheet.getSheetName()).equals(CloseNames.key(Schema.START)))
                .findFirst();
        if (start.isEmpty()) {
            findings.missing(
                    Schema.START,
                    "the sheet is missing; yards, mph and inches, 20 C at sea level and 50 % humidity, the"
                            + " Bearman-Harvey ball and a 48 in length limit are assumed.");
            return BookSettings.DEFAULT;
        }
        return StartReader.read(start.get(), contents, findings);
    }

    private Optional<InputTable> needed(SheetSchema schema, String why) {
        if (sheet(schema).isEmpty()) {
            findings.problem(schema.name(), "the sheet is missing; " + why + "." + maybeSheet(schema));
        }
        return table(schema);
    }

    private Optional<InputTable> optional(SheetSchema schema, String otherwise) {
        if (sheet(schema).isEmpty()) {
            findings.missing(schema.name(), "the sheet is missing; " + otherwise + "." + maybeSheet(schema));
        }
        return table(schema);
    }

    private void requireSleeves(Optional<ClubReader> clubs) {
        boolean named = clubs.filter(ClubReader::anySleeveNamed).isPresent();
        if (named && sheet(SleeveColumns.SHEET).isEmpty()) {
            findings.problem(
                    SleeveColumns.SHEET.name(),
                    "the sheet is missing; the sheet Clubs names a sleeve, whose settings stand there."
                            + maybeSheet(SleeveColumns.SHEET));
        }
    }

    /** The table on a sheet; a sheet with content but without a heading that is known is a problem. */
    private Optional<InputTable> table(SheetSchema schema) {
        Optional<XSSFSheet> sheet = sheet(schema);
        Optional<InputTable> table = sheet.flatMap(found -> InputTable.on(found, schema, context));
        boolean needed = List.of(GolferColumns.SHEET, ClubColumns.SHEET).contains(schema);
        if (sheet.isPresent() && table.isEmpty() && (needed || sheet.get().getPhysicalNumberOfRows() > 0)) {
            findings.problem(
                    sheet.get().getSheetName(),
                    "the sheet has no headings, found none of its own in the first 10 rows; expected "
                            + String.join(
                                    ", ",
                                    schema.columns().stream()
                                            .map(Column::header)
                                            .limit(6)
                                            .toList())
                            + " ...");
        }
        return table;
    }

    private void warnOfGolfersWithoutClubs(GolferReader golfers, Optional<ClubReader> clubs) {
        clubs.ifPresent(reader -> golfers.golfers().stream()
                .filter(golfer -> reader.namesOf(golfer.name()).isEmpty()
                        && !reader.clubs().isEmpty())
                .forEach(golfer ->
                        findings.warning(golfer.cell(), "\"" + golfer.name() + "\" has no club on the sheet Clubs.")));
    }

    private void warnOfUnusedSheets() {
        for (SheetSchema schema : Schema.NOT_USED) {
            sheet(schema)
                    .flatMap(sheet -> InputTable.on(sheet, schema, context))
                    .filter(table -> !table.rows().isEmpty())
                    .ifPresent(table -> findings.warning(
                            schema.name(), "the sheet " + schema.name() + " is not used yet by this version."));
        }
    }

    private Optional<XSSFSheet> sheet(SheetSchema schema) {
        return sheets().stream()
                .filter(sheet -> schema.isCalled(sheet.getSheetName()))
                .findFirst();
    }

    private List<XSSFSheet> sheets() {
        List<XSSFSheet> sheets = new ArrayList<>();
        workbook.sheetIterator().forEachRemaining(sheet -> {
            if (sheet instanceof XSSFSheet cells) {
                sheets.add(cells);
            }
        });
        return sheets;
    }

    private String maybeSheet(SheetSchema schema) {
        return sheets().stream()
                .map(XSSFSheet::getSheetName)
                .filter(name -> !Schema.knows(name))
                .filter(name -> CloseNames.closest(name, List.of(schema.name())).isPresent())
                .findFirst()
                .map(name -> " Maybe the sheet \"" + name + "\" is meant?")
                .orElse("");
    }
}
