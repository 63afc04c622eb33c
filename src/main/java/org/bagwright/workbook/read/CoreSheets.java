package org.bagwright.workbook.read;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.book.StockItem;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.GolferColumn;
import org.bagwright.workbook.schema.SleeveColumn;
import org.bagwright.workbook.schema.WeightColumn;

/**
 * The sheets to which the others refer.
 *
 * @param golfers the sheet Golfers, empty where it cannot be read
 * @param sleeves the sleeves
 * @param kits the kits of weights
 * @param clubs the sheet Clubs, empty where it cannot be read
 */
record CoreSheets(
        Optional<GolferReader> golfers, Drafts<SleeveDraft> sleeves, Drafts<KitDraft> kits, Optional<ClubSheet> clubs) {

    static CoreSheets read(BookSheets sheets, Findings findings) {
        Optional<GolferReader> golfers = sheets.needed(GolferColumn.SHEET, "every golfer needs a row there")
                .map(table -> GolferReader.read(table, findings));
        NameIndex names = namesOf(golfers);
        Drafts<SleeveDraft> sleeves = sheets.table(SleeveColumn.SHEET)
                .map(table -> SleeveReader.read(table, findings))
                .orElseGet(Drafts::withoutSheet);
        Drafts<KitDraft> kits = sheets.table(WeightColumn.SHEET)
                .map(table -> WeightReader.read(table, findings))
                .orElseGet(Drafts::withoutSheet);
        Optional<ClubSheet> clubs = sheets.needed(ClubColumn.SHEET, "every club needs a row there")
                .map(table -> ClubSheet.read(table, findings, names, sleeves, kits));
        return new CoreSheets(golfers, sleeves, kits, clubs);
    }

    /** Reports a sheet that is missing though a club names something on it. */
    void requireNamed(BookSheets sheets) {
        if (clubs.filter(ClubSheet::anySleeveNamed).isPresent()) {
            sheets.require(SleeveColumn.SHEET, "the sheet Clubs names a sleeve, and its settings belong there");
        }
        if (clubs.filter(ClubSheet::anyKitNamed).isPresent()) {
            sheets.require(
                    WeightColumn.SHEET, "the sheet Clubs names a kit of weights, and its weightings belong there");
        }
    }

    /** Warns of rows of the sheet Clubs that may mean something else, and of cells of clubs and golfers that change nothing. */
    void warnOfIdleCells(List<Shot> shots, Aims aims) {
        List<ClubSheet.Filled> rows = clubs.map(ClubSheet::filled).orElse(List.of());
        new SharedSlots(rows, shots).warn();
        new IdleCells(rows, aims).warn();
        golfers.map(GolferReader::filled).orElse(List.of()).forEach(this::warnOfIdleCells);
    }

    private void warnOfIdleCells(GolferReader.Filled golfer) {
        List<Club> his = clubs.map(ClubSheet::clubs).orElse(List.of()).stream()
                .filter(club -> club.golfer().equals(golfer.golfer().name()))
                .toList();
        if (!his.isEmpty()) {
            new IdleGolferCells(golfer, his, equipment(List.of()).sleeves()).warn();
        }
    }

    IdleAims idleAims(Map<Measure, InputRow> rows, Aims aims) {
        return new IdleAims(
                rows,
                aims,
                golfers.map(GolferReader::golfers).orElse(List.of()),
                clubs.map(ClubSheet::clubs).orElse(List.of()));
    }

    void warnOfGolfersWithoutClubs(Findings findings) {
        if (golfers.isPresent() && clubs.isPresent() && !clubs.get().clubs().isEmpty()) {
            golfers.get().golfers().stream()
                    .filter(golfer -> clubs.get().namesOf(golfer.name()).isEmpty())
                    .forEach(golfer -> findings.warning(
                            golfer.cell(), "\"" + golfer.name() + "\" has no club on the sheet Clubs."));
        }
    }

    /** The names of the golfers, also of rows with something wrong in them. */
    NameIndex golferNames() {
        return namesOf(golfers);
    }

    private static NameIndex namesOf(Optional<GolferReader> golfers) {
        return golfers.map(GolferReader::names).orElseGet(NameIndex::new);
    }

    /** The cells of the clubs whose loft or lie is still as a fit of gauge readings wrote it. */
    Set<String> gauged() {
        return clubs.map(ClubSheet::gauged).orElse(Set.of());
    }

    Book.Equipment equipment(List<StockItem> stock) {
        List<Sleeve> sound =
                sleeves.all().stream().flatMap(draft -> draft.sleeve().stream()).toList();
        List<Kit> soundKits =
                kits.all().stream().flatMap(draft -> draft.kit().stream()).toList();
        return new Book.Equipment(sound, soundKits, stock);
    }
}
