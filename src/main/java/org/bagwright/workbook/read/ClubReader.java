package org.bagwright.workbook.read;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
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
import org.bagwright.domain.units.Swingweight;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.text.CellContent;

/** Reads one row of the sheet Clubs. */
final class ClubReader {
    /** Other words of the trade for a kind, from memory. */
    private static final Map<ClubKind, List<String>> OTHER_KINDS = Map.of(
            ClubKind.WOOD,
            List.of("fairway", "fairway wood", "fairway metal", "metal", "metal wood", "metalwood", "fw"),
            ClubKind.HYBRID,
            List.of("rescue", "rescue club", "utility", "utility wood", "utility club", "hy"),
            ClubKind.IRON,
            List.of("long iron", "mid iron", "short iron", "driving iron", "utility iron"),
            ClubKind.WEDGE,
            List.of(
                    "pitching wedge",
                    "gap wedge",
                    "approach wedge",
                    "sand wedge",
                    "lob wedge",
                    "pw",
                    "gw",
                    "aw",
                    "sw",
                    "lw"));

    private static final Map<String, ClubKind> KINDS = kinds();

    private final InputRow row;
    private final Optional<String> golfer;
    private final OptionalInt slot;
    private final Optional<String> name;
    private final Optional<ClubKind> kind;

    /** @param golfer whose club it is, where that is known */
    ClubReader(InputRow row, Optional<String> golfer) {
        this.row = row;
        this.golfer = golfer;
        this.slot = row.whole(ClubColumn.SLOT);
        this.name = row.text(ClubColumn.CLUB);
        this.kind = row.choice(ClubColumn.KIND, KINDS, ClubColumn.KIND.words());
    }

    /** Whether the club's name and golfer could be read. */
    boolean isNamed() {
        return golfer.isPresent() && name.isPresent();
    }

    void takePlace(ClubPlaces places) {
        name.ifPresent(club -> places.take(row, ownerKey(), slot, club));
    }

    /** Takes its row into its slot, whose key it gives; nothing where the slot could not be read. */
    Optional<String> takeSlot(SlotRows slots) {
        Optional<Boolean> inBag = row.yesNo(ClubColumn.IN_BAG);
        boolean pinned = row.yesNo(ClubColumn.PINNED).orElse(false);
        Optional<String> slotKey =
                slot.isPresent() ? Optional.of(ClubPlaces.slotKey(ownerKey(), slot.getAsInt())) : Optional.empty();
        slotKey.ifPresent(key -> slots.take(row, key, inBag, pinned));
        return slotKey;
    }

    /** Whose clubs a row counts among: the golfer, or the name as written where it is no golfer's. */
    private String ownerKey() {
        Optional<String> written = row.content(ClubColumn.GOLFER) instanceof CellContent.Words words
                ? Optional.of(words.text())
                : Optional.empty();
        return CloseNames.key(golfer.or(() -> written).orElse(""));
    }

    /** The club; empty when something is wrong in its row. */
    Optional<Club> read(ClubSleeves sleeves, ClubKits kits) {
        ClubSleeves.Fitted fitted = sleeves.fitted(row);
        ClubBends bends = ClubBends.of(row, kind);
        ClubKits.Fitted kit = kits.fitted(row);
        Optional<StatedHead> head = head(fitted.statedAt());
        OptionalDouble lengthM = row.number(ClubColumn.LENGTH);
        Freedom freedom = freedom(bends, fitted);
        Targets targets = targets();
        HeadForm form = new HeadFormReader(row, lengthM).form(kind);
        ClubParts parts = parts(lengthM, fitted.sleeve(), kit.kit());
        if (row.isSpoilt()) {
            return Optional.empty();
        }
        Choice today = new Choice(fitted.setting(), kit.weighting(), bends.today());
        return Optional.of(new Club(identity(), head.orElseThrow(), form, parts, today, true, freedom, targets));
    }

    private ClubIdentity identity() {
        return new ClubIdentity(
                golfer.orElseThrow(),
                slot.orElseThrow(),
                name.orElseThrow(),
                kind.orElseThrow(),
                row.cell(ClubColumn.CLUB));
    }

    private Optional<StatedHead> head(Optional<String> statedAt) {
        OptionalDouble loft = row.number(ClubColumn.LOFT);
        OptionalDouble lie = row.number(ClubColumn.LIE);
        double face = row.number(ClubColumn.FACE).orElse(0);
        return loft.isEmpty() || lie.isEmpty()
                ? Optional.empty()
                : Optional.of(new StatedHead(loft.getAsDouble(), lie.getAsDouble(), face, statedAt));
    }

    private Freedom freedom(ClubBends bends, ClubSleeves.Fitted fitted) {
        boolean pinned = row.yesNo(ClubColumn.PINNED).orElse(false);
        boolean optional = row.yesNo(ClubColumn.OPTIONAL).orElse(false);
        return new Freedom(bends.range(), pinned, fitted.allowed(), optional, new LimitReader(row).ofClub());
    }

    private Targets targets() {
        return new Targets(
                row.number(ClubColumn.LOFT_TARGET),
                row.number(ClubColumn.LIE_TARGET),
                row.number(ClubColumn.CARRY_TARGET),
                row.number(ClubColumn.GAP_WISH),
                swingweight(ClubColumn.SWINGWEIGHT_TARGET),
                row.number(ClubColumn.GOLFER_LIE));
    }

    private ClubParts parts(OptionalDouble lengthM, Optional<String> sleeve, Optional<String> kit) {
        OptionalDouble balanceM = row.number(ClubColumn.SHAFT_BALANCE);
        if (lengthM.isPresent() && balanceM.orElse(0) >= lengthM.getAsDouble()) {
            row.problem(
                    ClubColumn.SHAFT_BALANCE,
                    "shaft balance must be less than the club's length, found "
                            + row.content(ClubColumn.SHAFT_BALANCE).shown()
                            + "; expected the balance point of the cut shaft from its butt end.");
        }
        return new ClubParts(
                lengthM,
                sleeve,
                kit,
                row.number(ClubColumn.SHAFT_MASS),
                balanceM,
                row.number(ClubColumn.GRIP_MASS),
                swingweight(ClubColumn.SWINGWEIGHT));
    }

    private Optional<Swingweight> swingweight(Column column) {
        Optional<String> text = row.text(column);
        Optional<Swingweight> swingweight = text.flatMap(Swingweight::parsed);
        if (text.isPresent() && swingweight.isEmpty()) {
            row.problem(
                    column,
                    column.subject() + " must be a letter A to G and points 0 to 9.9, such as D2 or C9.5, found "
                            + row.content(column).shown() + ".");
        }
        return swingweight;
    }

    private static Map<String, ClubKind> kinds() {
        Map<String, ClubKind> kinds = new HashMap<>();
        for (ClubKind kind : ClubKind.values()) {
            kinds.put(kind.name().toLowerCase(Locale.ROOT), kind);
        }
        OTHER_KINDS.forEach((kind, words) -> words.forEach(word -> kinds.put(word, kind)));
        return Map.copyOf(kinds);
    }
}
