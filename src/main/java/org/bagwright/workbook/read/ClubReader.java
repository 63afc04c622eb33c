package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubIdentity;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.ClubParts;
import org.bagwright.domain.club.Freedom;
import org.bagwright.domain.club.HeadForm;
import org.bagwright.domain.club.StatedHead;
import org.bagwright.domain.club.Targets;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.GaugeNote;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.ClubColumns;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.text.CellContent;

/** Reads the sheet Clubs. */
final class ClubReader {
    private static final List<Column> NEEDED =
            List.of(ClubColumns.SLOT, ClubColumns.CLUB, ClubColumns.KIND, ClubColumns.LOFT, ClubColumns.LIE);
    private static final Map<String, ClubKind> KINDS = kinds();

    private record Identity(Optional<String> golfer, OptionalInt slot, Optional<String> name, Optional<ClubKind> kind) {

        private ClubIdentity settled(String cell) {
            return new ClubIdentity(
                    golfer.orElseThrow(), slot.orElseThrow(), name.orElseThrow(), kind.orElseThrow(), cell);
        }
    }

    private record Draft(InputRow row, String slotKey, Club club) {}

    private final InputTable table;
    private final BookContext context;
    private final NameIndex golfers;
    private final ClubSleeves sleeves;
    private final ClubKits kits;
    private final ClubPlaces places = new ClubPlaces();
    private final SlotRows slots = new SlotRows();
    private final List<Draft> drafts = new ArrayList<>();
    private final List<Club> clubs = new ArrayList<>();
    private final Set<String> gauged = new HashSet<>();
    private boolean allNamesRead = true;

    private ClubReader(InputTable table, BookContext context, NameIndex golfers, ClubSleeves sleeves, ClubKits kits) {
        this.table = table;
        this.context = context;
        this.golfers = golfers;
        this.sleeves = sleeves;
        this.kits = kits;
    }

    static ClubReader read(
            InputTable table, BookContext context, NameIndex golfers, SleeveReader sleeves, WeightReader kits) {
        ClubReader reader = new ClubReader(table, context, golfers, new ClubSleeves(sleeves), new ClubKits(kits));
        List<Column> needed = new ArrayList<>(NEEDED);
        if (golfers.names().size() > 1) {
            needed.add(0, ClubColumns.GOLFER);
        }
        boolean complete = table.requireColumns(needed);
        reader.readRows(complete);
        table.warnOfCloseHeadings(needed);
        return reader;
    }

    List<Club> clubs() {
        return clubs;
    }

    /** The cells of the clubs whose loft or lie stands as a fit of gauge readings wrote it. */
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
            context.findings()
                    .problem(
                            table.cellUnder(ClubColumns.CLUB),
                            "the sheet has no club, found no filled row under the headings; expected a club here.");
        }
        if (!table.has(ClubColumns.LENGTH)) {
            context.findings()
                    .missing(
                            table.firstHeadingCell(),
                            "the column Length is missing; club lengths are assumed from kind and loft.");
        }
        rows.forEach(this::readRow);
        drafts.forEach(this::settle);
    }

    /** With all rows read, it is known which club of a slot is in the bag today. */
    private void settle(Draft draft) {
        Club club = draft.club().withInBag(slots.isInBag(draft.row(), draft.slotKey()));
        clubs.add(club);
        if (club.pinned() && !club.inBag()) {
            draft.row()
                    .warning(
                            ClubColumns.PINNED,
                            "the club \"" + club.name() + "\" is pinned but not in the bag today; the plan takes it as"
                                    + " this row says.");
        }
    }

    private void readRow(InputRow row) {
        row.require(NEEDED.toArray(Column[]::new));
        Identity identity = new Identity(
                golferOf(row),
                row.whole(ClubColumns.SLOT),
                row.text(ClubColumns.CLUB),
                row.choice(ClubColumns.KIND, KINDS, ClubColumns.KIND.words()));
        allNamesRead &= identity.golfer().isPresent() && identity.name().isPresent();
        String owner = ownerKey(row, identity);
        identity.name().ifPresent(club -> places.take(row, owner, identity.slot(), club));
        Optional<Boolean> inBag = row.yesNo(ClubColumns.IN_BAG);
        boolean pinned = row.yesNo(ClubColumns.PINNED).orElse(false);
        Optional<String> slotKey = identity.slot().isPresent()
                ? Optional.of(ClubPlaces.slotKey(owner, identity.slot().getAsInt()))
                : Optional.empty();
        slotKey.ifPresent(key -> slots.take(row, key, inBag, pinned));
        build(row, identity, sleeves.fitted(row), ClubBends.of(row, identity.kind()), kits.fitted(row))
                .ifPresent(club -> drafts.add(new Draft(row, slotKey.orElseThrow(), club)));
        if (GaugeNote.isOn(row, ClubColumns.LOFT) || GaugeNote.isOn(row, ClubColumns.LIE)) {
            gauged.add(row.cell(ClubColumns.CLUB));
        }
    }

    /** Whose clubs a row counts among: the golfer, or the name as written where it is no golfer's. */
    private static String ownerKey(InputRow row, Identity identity) {
        Optional<String> written = row.content(ClubColumns.GOLFER) instanceof CellContent.Words words
                ? Optional.of(words.text())
                : Optional.empty();
        return CloseNames.key(identity.golfer().or(() -> written).orElse(""));
    }

    private static Optional<Club> build(
            InputRow row, Identity identity, ClubSleeves.Fitted fitted, ClubBends bends, ClubKits.Fitted kit) {
        Optional<StatedHead> head = head(row, fitted);
        OptionalDouble lengthM = row.number(ClubColumns.LENGTH);
        boolean pinned = row.yesNo(ClubColumns.PINNED).orElse(false);
        boolean optional = row.yesNo(ClubColumns.OPTIONAL).orElse(false);
        Targets targets = targets(row);
        HeadForm form = HeadFormReader.form(row, identity.kind(), lengthM);
        ClubParts parts = ClubPartsReader.parts(row, lengthM, fitted.sleeve(), kit.kit());
        if (row.isSpoilt()) {
            return Optional.empty();
        }
        return Optional.of(new Club(
                identity.settled(row.cell(ClubColumns.CLUB)),
                head.orElseThrow(),
                form,
                parts,
                new Choice(fitted.setting(), kit.weighting(), bends.today()),
                true,
                new Freedom(bends.range(), pinned, fitted.allowed(), optional),
                targets));
    }

    private Optional<String> golferOf(InputRow row) {
        if (!table.has(ClubColumns.GOLFER) && golfers.names().size() != 1) {
            row.spoil();
            return Optional.empty();
        }
        return golfers.golferOf(row, ClubColumns.GOLFER);
    }

    private static Optional<StatedHead> head(InputRow row, ClubSleeves.Fitted fitted) {
        OptionalDouble loft = row.number(ClubColumns.LOFT);
        OptionalDouble lie = row.number(ClubColumns.LIE);
        double face = row.number(ClubColumns.FACE).orElse(0);
        return loft.isEmpty() || lie.isEmpty()
                ? Optional.empty()
                : Optional.of(new StatedHead(loft.getAsDouble(), lie.getAsDouble(), face, fitted.statedAt()));
    }

    private static Targets targets(InputRow row) {
        return new Targets(
                row.number(ClubColumns.LOFT_TARGET),
                row.number(ClubColumns.LIE_TARGET),
                row.number(ClubColumns.CARRY_TARGET),
                row.number(ClubColumns.GAP_WISH),
                ClubPartsReader.swingweight(row, ClubColumns.SWINGWEIGHT_TARGET),
                row.number(ClubColumns.GOLFER_LIE));
    }

    private static Map<String, ClubKind> kinds() {
        Map<String, ClubKind> kinds = new HashMap<>();
        for (ClubKind kind : ClubKind.values()) {
            kinds.put(kind.name().toLowerCase(Locale.ROOT), kind);
        }
        kinds.put("fairway", ClubKind.WOOD);
        kinds.put("fairway wood", ClubKind.WOOD);
        return Map.copyOf(kinds);
    }
}
