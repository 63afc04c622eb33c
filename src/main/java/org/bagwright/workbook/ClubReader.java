package org.bagwright.workbook;

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
import org.bagwright.domain.Bend;
import org.bagwright.domain.BendRange;
import org.bagwright.domain.Club;
import org.bagwright.domain.ClubKind;
import org.bagwright.domain.HeadForm;
import org.bagwright.domain.Numbers;
import org.bagwright.domain.StatedHead;
import org.bagwright.domain.Targets;

/** Reads the sheet Clubs. */
final class ClubReader {
    private static final List<Column> NEEDED =
            List.of(ClubColumns.SLOT, ClubColumns.CLUB, ClubColumns.KIND, ClubColumns.LOFT, ClubColumns.LIE);
    private static final int MOST_BEND_STEPS = 20;
    private static final Map<String, ClubKind> KINDS = kinds();

    private record Placed(String club, String clubCell, String slotCell) {}

    private final InputTable table;
    private final BookContext context;
    private final NameIndex golfers;
    private final ClubSleeves sleeves;
    private final Map<String, Placed> bySlot = new HashMap<>();
    private final Map<String, NameIndex> namesByGolfer = new HashMap<>();
    private final List<Club> clubs = new ArrayList<>();
    private final Set<String> gauged = new HashSet<>();
    private boolean allNamesRead = true;

    private ClubReader(InputTable table, BookContext context, NameIndex golfers, ClubSleeves sleeves) {
        this.table = table;
        this.context = context;
        this.golfers = golfers;
        this.sleeves = sleeves;
    }

    static ClubReader read(InputTable table, BookContext context, NameIndex golfers, SleeveReader sleeves) {
        ClubReader reader = new ClubReader(table, context, golfers, new ClubSleeves(sleeves));
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
        return namesByGolfer.getOrDefault(CloseNames.key(golfer), new NameIndex());
    }

    /** Whether every club's name and golfer could be read, so that a club not found is really not there. */
    boolean allNamesRead() {
        return allNamesRead;
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
                    .assumed(
                            table.firstHeadingCell(),
                            "the column Length is missing; club lengths are assumed from kind and loft.");
        }
        rows.forEach(this::readRow);
        warnOfUnused(rows);
    }

    private void warnOfUnused(List<InputRow> rows) {
        for (Column column : ClubColumns.NOT_USED) {
            rows.stream()
                    .filter(row -> row.isGiven(column))
                    .findFirst()
                    .ifPresent(row ->
                            row.warning(column, "the column " + column.header() + " is not used yet by this version."));
        }
    }

    private void readRow(InputRow row) {
        row.require(NEEDED.toArray(Column[]::new));
        Optional<String> golfer = golferOf(row);
        OptionalInt slot = row.whole(ClubColumns.SLOT);
        Optional<String> name = row.text(ClubColumns.CLUB);
        Optional<ClubKind> kind = row.choice(ClubColumns.KIND, KINDS, ClubColumns.KIND.words());
        allNamesRead &= golfer.isPresent() && name.isPresent();
        String key = golfer.or(() -> row.content(ClubColumns.GOLFER) instanceof CellContent.Words words
                        ? Optional.of(words.text())
                        : Optional.empty())
                .map(CloseNames::key)
                .orElse("");
        name.ifPresent(club -> place(row, key, slot, club));
        ClubSleeves.Fitted fitted = sleeves.fitted(row);
        Optional<StatedHead> head = head(row, fitted);
        Bends bends = bends(row, kind);
        OptionalDouble lengthM = row.number(ClubColumns.LENGTH);
        boolean pinned = row.yesNo(ClubColumns.PINNED).orElse(false);
        Targets targets = targets(row);
        OptionalDouble golferLieDeg = row.number(ClubColumns.GOLFER_LIE);
        HeadForm form = HeadFormReader.form(row);
        if (GaugeNote.isOn(row, ClubColumns.LOFT) || GaugeNote.isOn(row, ClubColumns.LIE)) {
            gauged.add(row.cell(ClubColumns.CLUB));
        }
        if (!row.isSpoilt()) {
            clubs.add(new Club(
                    golfer.orElseThrow(),
                    slot.orElseThrow(),
                    name.orElseThrow(),
                    kind.orElseThrow(),
                    head.orElseThrow(),
                    lengthM,
                    fitted.sleeve(),
                    fitted.setting(),
                    bends.today(),
                    bends.range(),
                    pinned,
                    fitted.allowed(),
                    targets,
                    golferLieDeg,
                    form,
                    row.cell(ClubColumns.CLUB)));
        }
    }

    private Optional<String> golferOf(InputRow row) {
        if (!table.has(ClubColumns.GOLFER) && golfers.names().size() != 1) {
            row.spoil();
            return Optional.empty();
        }
        return golfers.golferOf(row, ClubColumns.GOLFER);
    }

    private void place(InputRow row, String golferKey, OptionalInt slot, String club) {
        Placed here = new Placed(club, row.cell(ClubColumns.CLUB), row.cell(ClubColumns.SLOT));
        Optional<String> sameName =
                namesByGolfer.computeIfAbsent(golferKey, key -> new NameIndex()).add(club, here.clubCell());
        Placed earlier = slot.isEmpty() ? null : bySlot.putIfAbsent(golferKey + "\n" + slot.getAsInt(), here);
        if (earlier == null) {
            sameName.ifPresent(first -> row.warning(
                    ClubColumns.CLUB,
                    "the club \"" + club + "\" is also in another slot, see " + first
                            + "; shots of that name count for both."));
        } else if (CloseNames.key(earlier.club()).equals(CloseNames.key(club))) {
            row.problem(
                    ClubColumns.CLUB,
                    "slot and club must be unique for a golfer, found \"" + club + "\" in slot " + slot.getAsInt()
                            + " again, first in " + earlier.clubCell() + ".");
        } else {
            row.problem(
                    ClubColumns.SLOT,
                    "a slot must have one club, found slot " + slot.getAsInt() + " again, first in "
                            + earlier.slotCell() + "; several candidates for one slot cannot be planned yet.");
        }
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
                row.number(ClubColumns.GAP_WISH));
    }

    private record Bends(Bend today, BendRange range) {}

    private static Bends bends(InputRow row, Optional<ClubKind> kind) {
        Bend today = new Bend(bendOf(row, ClubColumns.LOFT_BEND, kind), bendOf(row, ClubColumns.LIE_BEND, kind));
        double limitDeg = bendOf(row, ClubColumns.BEND_LIMIT, kind);
        double stepDeg = row.number(ClubColumns.BEND_STEP).orElse(BendRange.NONE.stepDeg());
        if (limitDeg / stepDeg > MOST_BEND_STEPS + 1e-9) {
            row.problem(
                    row.isGiven(ClubColumns.BEND_STEP) ? ClubColumns.BEND_STEP : ClubColumns.BEND_LIMIT,
                    "bend limit must be at most " + MOST_BEND_STEPS + " bend steps, found "
                            + Numbers.trimmed(limitDeg / stepDeg, 1)
                            + "; expected a larger step or a smaller limit.");
        }
        return new Bends(today, new BendRange(limitDeg, stepDeg));
    }

    private static double bendOf(InputRow row, Column column, Optional<ClubKind> kind) {
        double bendDeg = row.number(column).orElse(0);
        if (bendDeg != 0 && kind.isPresent() && !kind.get().bendable()) {
            row.problem(
                    column,
                    column.subject() + " must be 0 or blank for a " + kind.get().label() + ", found "
                            + row.content(column).shown() + "; only irons and wedges are bent.");
            return 0;
        }
        return bendDeg;
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
