package org.bagwright.workbook.read;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.LiveChoice;
import org.bagwright.domain.book.Matching;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.StockItem;
import org.bagwright.files.OtherProgram;
import org.bagwright.files.SourceFile;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.BookFile;
import org.bagwright.workbook.cells.CellContents;
import org.bagwright.workbook.cells.ColumnPlaces;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.FormulaValues;
import org.bagwright.workbook.cells.ResultSheets;
import org.bagwright.workbook.cells.UnreadableBookException;
import org.bagwright.workbook.edits.PlanEdits;
import org.bagwright.workbook.plan.LiveChoiceReader;
import org.bagwright.workbook.schema.AimColumn;
import org.bagwright.workbook.schema.ReadingColumn;
import org.bagwright.workbook.schema.ShotColumn;
import org.bagwright.workbook.schema.StartSetting;
import org.bagwright.workbook.schema.StockColumn;

/** Reads a fitter's .xlsx book into records and reports everything that is wrong in it together. */
public final class BookReader {
    /**
     * What reading gave.
     *
     * @param book the book; present exactly when there is no problem
     * @param messages everything found, problems first, each with its cell
     * @param clashes a problem for every sheet of the fitter's own that has the name of a result sheet
     * @param places where the columns of its sheets are
     */
    public record Result(Optional<Book> book, List<Message> messages, List<Message> clashes, ColumnPlaces places) {
        public Result {
            messages = List.copyOf(messages);
            clashes = List.copyOf(clashes);
        }
    }

    private final Findings findings = new Findings();
    private BookSheets sheets;

    private BookReader(XSSFWorkbook workbook) {
        BookContext context = new BookContext(new CellContents(workbook), BookSettings.DEFAULT.units(), findings);
        this.sheets = new BookSheets(workbook, context);
    }

    /** As {@link #read(SourceFile)} for a file that nothing else is made from. */
    public static Result read(Path file) {
        return read(new SourceFile(file));
    }

    /** Reads a book. The file is read once into memory and never opened for writing; no file makes this throw. */
    public static Result read(SourceFile file) {
        try (XSSFWorkbook workbook = BookFile.open(file)) {
            BookReader reader = new BookReader(workbook);
            new OtherProgram(file.path()).note().ifPresent(reader.findings::add);
            return reader.read();
        } catch (UnreadableBookException unreadable) {
            return new Result(Optional.empty(), List.of(unreadable.found()), List.of(), new ColumnPlaces(Map.of()));
        } catch (IOException closing) {
            throw new UncheckedIOException(closing);
        }
    }

    private Result read() {
        sheets.check();
        BookSettings settings = settings();
        sheets.warnOfTypos();
        sheets = sheets.in(settings.units());
        takeEdits();
        CoreSheets core = CoreSheets.read(sheets, findings);
        core.requireNamed(sheets);
        Book.Measurements measurements = measurements(core);
        Optional<AimReader> aimSheet = aims(settings.matching());
        Aims aims = aimSheet.map(AimReader::aims)
                .orElseGet(() -> Aims.defaults(settings.matching()))
                .plannedFor(settings.planFor());
        List<StockItem> stock = stock(core);
        core.warnOfGolfersWithoutClubs(findings);
        if (!findings.anyProblem()) {
            core.warnOfIdleCells(measurements.shots(), aims);
            core.idleAims(aimSheet.map(AimReader::rows).orElse(Map.of()), aims).warn(settings, findings);
        }
        List<LiveChoice> live = LiveChoiceReader.read(sheets.workbook(), sheets.context());
        List<Message> messages = findings.messages();
        Optional<Book> book = findings.anyProblem()
                ? Optional.empty()
                : Optional.of(new Book(
                        settings,
                        aims,
                        core.golfers().orElseThrow().golfers(),
                        core.clubs().orElseThrow().clubs(),
                        core.equipment(stock),
                        measurements,
                        live,
                        messages));
        return new Result(
                book,
                messages,
                new ResultSheets(sheets.workbook()).clashes(measurements.hasDates()),
                ColumnPlaces.of(sheets.workbook(), sheets.context()));
    }

    /** What was changed on the sheet Plan of an earlier run counts as if it was changed on the input sheets. */
    private void takeEdits() {
        PlanEdits edits = PlanEdits.of(sheets.workbook(), sheets.context());
        if (!edits.isEmpty()) {
            edits.notes().forEach(findings::add);
            FormulaValues formulas = FormulaValues.of(sheets.workbook());
            edits.write();
            formulas.refresh();
        }
    }

    private Book.Measurements measurements(CoreSheets core) {
        List<Shot> shots = sheets.optional(ShotColumn.SHEET, "flights are assumed")
                .map(table -> ShotReader.read(table, core))
                .orElse(List.of());
        List<Reading> readings = sheets.table(ReadingColumn.SHEET)
                .map(table -> ReadingReader.read(table, core.golferNames(), core.clubs(), core.sleeves()))
                .orElse(List.of());
        return new Book.Measurements(shots, readings, core.gauged());
    }

    private Optional<AimReader> aims(Matching matching) {
        return sheets.optional(AimColumn.SHEET, "the usual tolerances and importances are used")
                .map(table -> AimReader.read(table, matching));
    }

    private List<StockItem> stock(CoreSheets core) {
        return sheets.table(StockColumn.SHEET)
                .map(table -> StockReader.read(table, new StockNames(core.kits(), core.sleeves(), core.clubs())))
                .orElse(List.of());
    }

    private BookSettings settings() {
        Optional<XSSFSheet> start = sheets.start();
        if (start.isEmpty()) {
            findings.missing(
                    StartSetting.SHEET,
                    "the sheet is missing; yards, mph and inches, 20 C at sea level and 50 % humidity, the"
                            + " Bearman-Harvey ball and a 48 in length limit are assumed.");
            return BookSettings.DEFAULT;
        }
        return StartReader.read(start.get(), sheets.context().contents(), findings);
    }
}
