package org.bagwright.workbook.read;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.LiveChoice;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.StockItem;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.files.OtherProgram;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.BookFile;
import org.bagwright.workbook.cells.CellContents;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.cells.ResultSheets;
import org.bagwright.workbook.cells.UnreadableBookException;
import org.bagwright.workbook.plan.LiveChoiceReader;
import org.bagwright.workbook.schema.AimColumns;
import org.bagwright.workbook.schema.ClubColumns;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.GolferColumns;
import org.bagwright.workbook.schema.ReadingColumns;
import org.bagwright.workbook.schema.Schema;
import org.bagwright.workbook.schema.SheetSchema;
import org.bagwright.workbook.schema.ShotColumns;
import org.bagwright.workbook.schema.SleeveColumns;
import org.bagwright.workbook.schema.StockColumns;
import org.bagwright.workbook.schema.WeightColumns;

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

    /** What the other sheets refer to. */
    private record Parts(
            Optional<GolferReader> golfers,
            NameIndex names,
            SleeveReader sleeves,
            WeightReader kits,
            Optional<ClubReader> clubs) {}

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
            BookReader reader = new BookReader(workbook);
            new OtherProgram(file).note().ifPresent(reader.findings::warning);
            return reader.read();
        } catch (UnreadableBookException unreadable) {
            return new Result(Optional.empty(), List.of(unreadable.found()), List.of());
        } catch (IOException closing) {
            throw new UncheckedIOException(closing);
        }
    }

    private Result read() {
        Schema.READ.forEach(schema -> requireOnce(schema.name(), sheet -> schema.isCalled(sheet.getSheetName())));
        requireOnce(Schema.START, BookReader::isStart);
        tellHidden();
        BookSettings settings = settings();
        SheetNameTypos.warn(sheetNames(), findings);
        context = context.in(settings.units());
        Parts parts = parts();
        List<Shot> shots = optional(ShotColumns.SHEET, "shots are assumed")
                .map(table -> ShotReader.read(table, parts.names(), parts.clubs()))
                .orElse(List.of());
        List<Reading> readings = table(ReadingColumns.SHEET)
                .map(table -> ReadingReader.read(table, parts.names(), parts.clubs(), parts.sleeves()))
                .orElse(List.of());
        Aims aims = optional(AimColumns.SHEET, "the usual tolerances and importances hold")
                .map(table -> AimReader.read(table, settings.matching()))
                .orElseGet(() -> Aims.defaults(settings.matching()));
        List<StockItem> stock = table(StockColumns.SHEET)
                .map(table -> StockReader.read(table, new StockNames(parts.kits(), parts.sleeves(), parts.clubs())))
                .orElse(List.of());
        parts.golfers().ifPresent(reader -> warnOfGolfersWithoutClubs(reader, parts.clubs()));
        return result(settings, aims, parts, stock, shots, readings);
    }

    /** What nobody sees is easily forgotten, and counts all the same. */
    private void tellHidden() {
        for (int index = 0; index < workbook.getNumberOfSheets(); index++) {
            String name = workbook.getSheetName(index);
            boolean read = isStart(workbook.getSheetAt(index))
                    || Schema.READ.stream().anyMatch(schema -> schema.isCalled(name));
            if (read && workbook.getSheetVisibility(index) != SheetVisibility.VISIBLE) {
                findings.warning(name, "this sheet is hidden and is read all the same");
            }
        }
    }

    private Parts parts() {
        Optional<GolferReader> golfers = needed(GolferColumns.SHEET, "every golfer has a row there")
                .map(table -> GolferReader.read(table, context));
        NameIndex names = golfers.map(GolferReader::names).orElseGet(NameIndex::new);
        SleeveReader sleeves =
                table(SleeveColumns.SHEET).map(SleeveReader::read).orElseGet(SleeveReader::none);
        WeightReader kits = table(WeightColumns.SHEET)
                .map(table -> WeightReader.read(table, context))
                .orElseGet(WeightReader::none);
        Optional<ClubReader> clubs = needed(ClubColumns.SHEET, "every club has a row there")
                .map(table -> ClubReader.read(table, context, names, sleeves, kits));
        requireNamed(
                clubs.filter(ClubReader::anySleeveNamed),
                SleeveColumns.SHEET,
                "names a sleeve, whose settings stand there");
        requireNamed(
                clubs.filter(ClubReader::anyKitNamed),
                WeightColumns.SHEET,
                "names a kit of weights, whose weightings stand there");
        return new Parts(golfers, names, sleeves, kits, clubs);
    }

    private Result result(
            BookSettings settings,
            Aims aims,
            Parts parts,
            List<StockItem> stock,
            List<Shot> shots,
            List<Reading> readings) {
        List<LiveChoice> live = LiveChoiceReader.read(workbook, context);
        List<Message> messages = findings.messages();
        if (findings.anyProblem()) {
            return new Result(Optional.empty(), messages, new ResultSheets(workbook).clashes());
        }
        Book book = new Book(
                settings,
                aims,
                parts.golfers().orElseThrow().golfers(),
                parts.clubs().orElseThrow().clubs(),
                new Book.Equipment(parts.sleeves().sleeves(), parts.kits().kits(), stock),
                new Book.Measurements(
                        shots, readings, parts.clubs().orElseThrow().gauged()),
                live,
                messages);
        return new Result(Optional.of(book), messages, new ResultSheets(workbook).clashes());
    }

    private BookSettings settings() {
        Optional<XSSFSheet> start =
                sheets().stream().filter(BookReader::isStart).findFirst();
        if (start.isEmpty()) {
            findings.missing(
                    Schema.START,
                    "the sheet is missing; yards, mph and inches, 20 C at sea level and 50 % humidity, the"
                            + " Bearman-Harvey ball and a 48 in length limit are assumed.");
            return BookSettings.DEFAULT;
        }
        return StartReader.read(start.get(), contents, findings);
    }

    private static boolean isStart(XSSFSheet sheet) {
        return CloseNames.key(sheet.getSheetName()).equals(CloseNames.key(Schema.START));
    }

    private void requireOnce(String name, Predicate<XSSFSheet> called) {
        sheets().stream()
                .filter(called)
                .skip(1)
                .map(XSSFSheet::getSheetName)
                .forEach(second -> findings.problem(
                        second,
                        "the sheet " + name + " is there twice, case and blanks in names do not count; rename or remove"
                                + " one."));
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

    private void requireNamed(Optional<ClubReader> naming, SheetSchema schema, String what) {
        if (naming.isPresent() && sheet(schema).isEmpty()) {
            findings.problem(schema.name(), "the sheet is missing; the sheet Clubs " + what + "." + maybeSheet(schema));
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

    private List<String> sheetNames() {
        return sheets().stream().map(XSSFSheet::getSheetName).toList();
    }

    private String maybeSheet(SheetSchema schema) {
        return SheetNameTypos.slip(sheetNames(), schema.name())
                .map(name -> " Maybe the sheet \"" + name + "\" is meant?")
                .orElse("");
    }
}
