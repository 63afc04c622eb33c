package org.bagwright.workbook.plan;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bagwright.workbook.settings.SheetColumn;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BookResult;

/** The columns of the sheet Plan, and which of them a book needs: the others stay, so that no address moves, but hidden. */
public final class PlanLayout {
    private static final List<SheetColumn> COLUMNS = Stream.of(
                    Stream.of(PlanColumn.values()), TermColumn.all().stream(), MissColumn.all().stream())
            .flatMap(columns -> columns)
            .map(SheetColumn.class::cast)
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

    private static final Map<PlanColumn, LimitKind> LIMITS = Map.of(
            PlanColumn.GAP_LEAST, LimitKind.GAP_LEAST,
            PlanColumn.GAP_MOST, LimitKind.GAP_MOST,
            PlanColumn.CARRY_LEAST, LimitKind.CARRY_LEAST,
            PlanColumn.CARRY_MOST, LimitKind.CARRY_MOST,
            PlanColumn.LANDING_LEAST, LimitKind.LANDING_LEAST);

    private final List<SheetColumn> columns;
    private final Set<LimitKind> limits;
    private final boolean candidates;
    private final boolean kits;
    private final boolean bends;

    public PlanLayout(BookResult result) {
        columns = Stream.concat(COLUMNS.stream(), StockColumn.all(result.stock()).stream())
                .toList();
        limits = slots(result)
                .flatMap(slot -> slot.options().stream())
                .flatMap(option -> option.setup().stream())
                .flatMap(setup -> setup.wishes().limits().byKind().keySet().stream())
                .collect(Collectors.toSet());
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
    List<SheetColumn> columns() {
        return columns;
    }

    boolean isHidden(SheetColumn column) {
        boolean unused = column == PlanColumn.FILLED || (column == PlanColumn.HEAD_MASS_CHANGE && !candidates && !kits);
        boolean unlimited =
                column instanceof PlanColumn plan && LIMITS.containsKey(plan) && !limits.contains(LIMITS.get(plan));
        return unused
                || unlimited
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
        List<SheetColumn> shown = columns.stream()
                .filter(column -> column.index() >= from.index() && !isHidden(column))
                .toList();
        return shown.get(place).index();
    }
}
