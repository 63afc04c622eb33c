package org.bagwright.workbook.read;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.files.OtherProgram;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.BookFile;
import org.bagwright.workbook.cells.CellContents;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.cells.ResultSheets;
import org.bagwright.workbook.cells.UnreadableBookException;
import org.bagwright.workbook.plan.LiveChoiceReader;
import org.bagwright.workbook.schema.AimColumns;
import org.bagwright.workbook.schema.ClubColumns;
import org.bagwright.workbook.schema.GolferColumns;
import org.bagwright.workbook.schema.ReadingColumns;
import org.bagwright.workbook.schema.StartSetting;
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
            Drafts<SleeveDraft> sleeves,
            Drafts<KitDraft> kits,
            Optional<ClubSheet> clubs) {

        private Book.Equipment equipment(List<StockItem> stock) {
            List<Sleeve> soundSleeves =
                    sleeves.all().stream().flatMap(draft -> draft.sleeve().stream()).toList();
            List<Kit> soundKits =
                    kits.all().stream().flatMap(draft -> draft.kit().stream()).toList();
            return new Book.Equipment(soundSleeves, soundKits, stock);
        }
    }

    private final Findings findings = new Findings();
    private BookSheets sheets;

    private BookReader(XSSFWorkbook workbook) {
        BookContext context = new BookContext(new CellContents(workbook), BookSettings.DEFAULT.units(), findings);
        this.sheets = new BookSheets(workbook, context);
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
        sheets.check();
        BookSettings settings = settings();
        sheets.warnOfTypos();
        sheets = sheets.in(settings.units());
        Parts parts = parts();
        List<Shot> shots = sheets.optional(ShotColumns.SHEET, "flights are assumed")
                .map(table -> ShotReader.read(table, parts.names(), parts.clubs()))
                .orElse(List.of());
        List<Reading> readings = sheets.table(ReadingColumns.SHEET)
                .map(table -> ReadingReader.read(table, parts.names(), parts.clubs(), parts.sleeves()))
                .orElse(List.of());
        Aims aims = sheets.optional(AimColumns.SHEET, "the usual tolerances and importances are used")
                .map(table -> AimReader.read(table, settings.matching()))
                .orElseGet(() -> Aims.defaults(settings.matching()));
        List<StockItem> stock = sheets.table(StockColumns.SHEET)
                .map(table -> StockReader.read(table, new StockNames(parts.kits(), parts.sleeves(), parts.clubs())))
                .orElse(List.of());
        parts.golfers().ifPresent(reader -> warnOfGolfersWithoutClubs(reader, parts.clubs()));
        return result(settings, aims, parts, stock, new Book.Measurements(shots, readings, gauged(parts)));
    }

    private static Set<String> gauged(Parts parts) {
        return parts.clubs().map(ClubSheet::gauged).orElse(Set.of());
    }

    private Parts parts() {
        Optional<GolferReader> golfers = sheets.needed(GolferColumns.SHEET, "every golfer needs a row there")
                .map(table -> GolferReader.read(table, findings));
        NameIndex names = golfers.map(GolferReader::names).orElseGet(NameIndex::new);
        Drafts<SleeveDraft> sleeves =
                sheets.table(SleeveColumns.SHEET).map(SleeveReader::read).orElseGet(Drafts::withoutSheet);
        Drafts<KitDraft> kits = sheets.table(WeightColumns.SHEET)
                .map(table -> WeightReader.read(table, findings))
                .orElseGet(Drafts::withoutSheet);
        Optional<ClubSheet> clubs = sheets.needed(ClubColumns.SHEET, "every club needs a row there")
                .map(table -> ClubSheet.read(table, findings, names, sleeves, kits));
        if (clubs.filter(ClubSheet::anySleeveNamed).isPresent()) {
            sheets.require(
                    SleeveColumns.SHEET, "the sheet Clubs names a sleeve, and its settings belong there");
        }
        if (clubs.filter(ClubSheet::anyKitNamed).isPresent()) {
            sheets.require(
                    WeightColumns.SHEET,
                    "the sheet Clubs names a kit of weights, and its weightings belong there");
        }
        return new Parts(golfers, names, sleeves, kits, clubs);
    }

    private Result result(
            BookSettings settings,
            Aims aims,
            Parts parts,
            List<StockItem> stock,
            Book.Measurements measurements) {
        List<LiveChoice> live = LiveChoiceReader.read(sheets.workbook(), sheets.context());
        List<Message> messages = findings.messages();
        List<Message> clashes = new ResultSheets(sheets.workbook()).clashes();
        if (findings.anyProblem()) {
            return new Result(Optional.empty(), messages, clashes);
        }
        Book book = new Book(
                settings,
                aims,
                parts.golfers().orElseThrow().golfers(),
                parts.clubs().orElseThrow().clubs(),
                parts.equipment(stock),
                measurements,
                live,
                messages);
        return new Result(Optional.of(book), messages, clashes);
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

    private void warnOfGolfersWithoutClubs(GolferReader golfers, Optional<ClubSheet> clubs) {
        clubs.ifPresent(reader -> golfers.golfers().stream()
                .filter(golfer -> reader.namesOf(golfer.name()).isEmpty()
                        && !reader.clubs().isEmpty())
                .forEach(golfer ->
                        findings.warning(golfer.cell(), "\"" + golfer.name() + "\" has no club on the sheet Clubs.")));
    }
}
