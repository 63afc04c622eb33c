package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.GaugeNote;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;

/** The sheet Clubs as it is read. */
final class ClubSheet {
    private static final List<Column> NEEDED =
            List.of(ClubColumn.SLOT, ClubColumn.CLUB, ClubColumn.KIND, ClubColumn.LOFT, ClubColumn.LIE);

    private record Draft(InputRow row, String slotKey, Club club) {}

    /**
     * A row and its club.
     *
     * @param row the row
     * @param club the club that it gives
     */
    record Filled(InputRow row, Club club) {}

    private final InputTable table;
    private final Findings findings;
    private final NameIndex golfers;
    private final ClubSleeves sleeves;
    private final ClubKits kits;
    private final ClubPlaces places = new ClubPlaces();
    private final SlotRows slots = new SlotRows();
    private final List<Draft> drafts = new ArrayList<>();
    private final List<Filled> filled = new ArrayList<>();
    private final Set<String> gauged = new HashSet<>();
    private boolean allNamesRead = true;

    private ClubSheet(InputTable table, Findings findings, NameIndex golfers, ClubSleeves sleeves, ClubKits kits) {
        this.table = table;
        this.findings = findings;
        this.golfers = golfers;
        this.sleeves = sleeves;
        this.kits = kits;
    }

    static ClubSheet read(
            InputTable table,
            Findings findings,
            NameIndex golfers,
            Drafts<SleeveDraft> sleeves,
            Drafts<KitDraft> kits) {
        ClubSheet sheet = new ClubSheet(table, findings, golfers, new ClubSleeves(sleeves), new ClubKits(kits));
        List<Column> needed = new ArrayList<>(NEEDED);
        if (golfers.names().size() > 1) {
            needed.add(0, ClubColumn.GOLFER);
        }
        boolean complete = table.requireColumns(needed);
        sheet.readRows(complete);
        table.tellUnread();
        return sheet;
    }

    List<Club> clubs() {
        return filled.stream().map(Filled::club).toList();
    }

    /** The clubs of a golfer with this name whose own rows are sound. */
    List<Club> called(String golfer, String name) {
        return clubs().stream()
                .filter(club -> CloseNames.key(club.golfer()).equals(CloseNames.key(golfer)))
                .filter(club -> CloseNames.key(club.name()).equals(CloseNames.key(name)))
                .toList();
    }

    /** The rows of the clubs. */
    List<Filled> filled() {
        return filled;
    }

    /** The cells of the clubs whose loft or lie is still as a fit of gauge readings wrote it. */
    Set<String> gauged() {
        return gauged;
    }

    /** The names of a golfer's clubs, also of rows with something wrong in them. */
    NameIndex namesOf(String golfer) {
        return places.namesOf(golfer);
    }

    /** Whether every club's name and golfer could be read, so that a club not found is really not there. */
    boolean allNamesRead() {
        return allNamesRead;
    }

    /** The names of all golfers' clubs, also of rows with something wrong in them. */
    NameIndex allNames() {
        return places.allNames();
    }

    boolean anyKitNamed() {
        return kits.anyNamed();
    }

    boolean anySleeveNamed() {
        return sleeves.anyNamed();
    }

    private void readRows(boolean complete) {
        List<InputRow> rows = table.rows();
        if (rows.isEmpty() && complete) {
            findings.problem(
                    table.cellUnder(ClubColumn.CLUB),
                    "No club: every row under the headings is empty. Enter a club here.");
        }
        if (!table.has(ClubColumn.LENGTH)) {
            findings.missing(
                    table.firstHeadingCell(),
                    "the column Length is missing; club lengths are assumed from kind and loft.");
        }
        rows.forEach(this::readRow);
        drafts.forEach(this::settle);
    }

    private void readRow(InputRow row) {
        row.require(NEEDED.toArray(Column[]::new));
        ClubReader club = new ClubReader(row, golferOf(row));
        allNamesRead &= club.isNamed();
        club.takePlace(places);
        Optional<String> slotKey = club.takeSlot(slots);
        club.read(sleeves, kits).ifPresent(read -> {
            drafts.add(new Draft(row, slotKey.orElseThrow(), read));
            new UsualFigures(row, read.kind(), read.golfer()).check(findings);
        });
        if (GaugeNote.isOn(row, ClubColumn.LOFT) || GaugeNote.isOn(row, ClubColumn.LIE)) {
            gauged.add(row.cell(ClubColumn.CLUB));
        }
    }

    private Optional<String> golferOf(InputRow row) {
        if (!table.has(ClubColumn.GOLFER) && golfers.names().size() != 1) {
            row.spoil();
            return Optional.empty();
        }
        return golfers.golferOf(row, ClubColumn.GOLFER);
    }

    /** With all rows read, it is known which club of a slot is in the bag today. */
    private void settle(Draft draft) {
        Club club = draft.club().withInBag(slots.isInBag(draft.row(), draft.slotKey()));
        filled.add(new Filled(draft.row(), club));
        if (club.pinned() && !club.inBag()) {
            draft.row()
                    .warning(
                            ClubColumn.PINNED,
                            "the club \"" + club.name() + "\" is pinned but not in the bag today; the plan uses it as"
                                    + " this row says.");
        }
    }
}
