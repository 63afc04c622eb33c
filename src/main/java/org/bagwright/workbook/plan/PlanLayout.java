package org.bagwright.workbook.plan;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BookResult;

/** The columns of the sheet Plan, and which of them a book needs: the others stay, so that no address moves, but hidden. */
public final class PlanLayout {
    private static final List<SheetColumn> COLUMNS = Stream.concat(
                    Stream.of(PlanColumn.values()), TermColumn.all().stream())
            .sorted(Comparator.comparingInt(SheetColumn::index))
            .toList();

    private static final Set<PlanColumn> OF_CANDIDATES = EnumSet.of(
            PlanColumn.PLANNED_CLUB,
            PlanColumn.LIVE_CLUB,
            PlanColumn.LENGTH_CHANGE,
            PlanColumn.LIVE_LIST,
            PlanColumn.LIVE_NEXT_CLUB);
    private static final Set<PlanColumn> OF_KITS =
            EnumSet.of(PlanColumn.TODAY_WEIGHTING, PlanColumn.PLANNED_WEIGHTING, PlanColumn.LIVE_WEIGHTING);

    private static final Set<PlanColumn> OF_BENDS = EnumSet.of(
            PlanColumn.PLANNED_LOFT_BEND,
            PlanColumn.PLANNED_LIE_BEND,
            PlanColumn.LIVE_LOFT_BEND,
            PlanColumn.LIVE_LIE_BEND);

    private final boolean candidates;
    private final boolean kits;
    private final boolean bends;

    public PlanLayout(BookResult result) {
        candidates = slots(result).anyMatch(SlotOptions::hasCandidates);
        kits = slots(result)
                .flatMap(slot -> slot.clubs().stream())
                .map(Club::kit)
                .anyMatch(kit -> kit.isPresent());
        bends = slots(result)
                .flatMap(slot -> slot.options().stream())
                .flatMap(option -> option.setup().stream())
                .anyMatch(setup -> !setup.choice().bend().equals(Bend.NONE));
    }

    private static Stream<SlotOptions> slots(BookResult result) {
        return result.bags().stream().flatMap(bag -> bag.options().slots().stream());
    }

    public boolean hasCandidates() {
        return candidates;
    }

    /** All columns in order. */
    static List<SheetColumn> columns() {
        return COLUMNS;
    }

    boolean isHidden(SheetColumn column) {
        boolean unused = column == PlanColumn.FILLED || (column == PlanColumn.HEAD_MASS_CHANGE && !candidates && !kits);
        return unused
                || (OF_CANDIDATES.contains(column) && !candidates)
                || (OF_KITS.contains(column) && !kits)
                || (OF_BENDS.contains(column) && !bends);
    }

    /** The column in this place among those that are shown, counted from 0. */
    int shown(int place) {
        return shown(PlanColumn.GOLFER, place);
    }

    /** The column in this place among those that are shown from one on, counted from 0. */
    int shown(PlanColumn from, int place) {
        List<SheetColumn> shown = COLUMNS.stream()
                .filter(column -> column.index() >= from.index() && !isHidden(column))
                .toList();
        return shown.get(place).index();
    }
}
