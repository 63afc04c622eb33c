package org.bagwright.workbook.plan;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.workbook.pen.CellText;
import org.bagwright.workbook.settings.SheetColumn;

/** The columns of the sheet Plan, and which of them a book needs: the others stay, so that no address moves, but hidden. */
public final class PlanLayout {
    /** What a screen shows of the sheet without scrolling, in characters, of which each is at most 7.9 pixels wide. */
    private static final double SCREEN_CHARS = 160;

    private static final double WIDEST_CHART_CHARS = 44;
    /** A club or a set-up in longer words gets smaller letters. */
    private static final double WIDEST_TEXT_CHARS = 18;

    private static final List<SheetColumn> COLUMNS = Stream.of(
                    Stream.of(PlanColumn.values()), TermColumn.all().stream(), MissColumn.all().stream())
            .flatMap(columns -> columns)
            .map(SheetColumn.class::cast)
            .sorted(Comparator.comparingInt(SheetColumn::index))
            .toList();

    private static final Set<PlanColumn> OF_CANDIDATES =
            EnumSet.of(PlanColumn.TODAY_CLUB, PlanColumn.PLANNED_CLUB, PlanColumn.LENGTH_CHANGE);
    private static final Set<PlanColumn> OF_KITS = EnumSet.of(PlanColumn.TODAY_WEIGHTING, PlanColumn.PLANNED_WEIGHTING);
    private static final Set<PlanColumn> OF_BENDS =
            EnumSet.of(PlanColumn.PLANNED_LOFT_BEND, PlanColumn.PLANNED_LIE_BEND);

    private static final Map<PlanColumn, LimitKind> LIMITS = Map.of(
            PlanColumn.GAP_LEAST, LimitKind.GAP_LEAST,
            PlanColumn.GAP_MOST, LimitKind.GAP_MOST,
            PlanColumn.CARRY_LEAST, LimitKind.CARRY_LEAST,
            PlanColumn.CARRY_MOST, LimitKind.CARRY_MOST,
            PlanColumn.LANDING_LEAST, LimitKind.LANDING_LEAST);

    private final List<SheetColumn> columns;
    private final Set<LimitKind> limits;
    private final Map<PlanColumn, Double> textChars = new EnumMap<>(PlanColumn.class);
    private final Set<PlanColumn> unused = EnumSet.noneOf(PlanColumn.class);

    public PlanLayout(BookResult result) {
        columns = Stream.concat(COLUMNS.stream(), StockColumn.all(result.stock()).stream())
                .toList();
        limits = slots(result)
                .flatMap(slot -> slot.options().stream())
                .flatMap(option -> option.setup().stream())
                .flatMap(setup -> setup.wishes().limits().byKind().keySet().stream())
                .collect(Collectors.toSet());
        boolean kits = slots(result)
                .flatMap(slot -> slot.clubs().stream())
                .map(Club::kit)
                .anyMatch(kit -> kit.isPresent());
        if (result.bags().size() == 1) {
            unused.add(PlanColumn.GOLFER);
        }
        choices(result, kits);
        texts(
                PlanColumn.LIVE_CLUB,
                slots(result).flatMap(slot -> slot.clubs().stream()).map(Club::name));
        texts(PlanColumn.TODAY_SETUP, setups(result, PlanState.TODAY));
        texts(PlanColumn.PLANNED_SETUP, setups(result, PlanState.PLANNED));
    }

    private void texts(PlanColumn column, Stream<String> texts) {
        double needed =
                texts.mapToDouble(text -> new CellText(text).widthChars()).max().orElse(0);
        textChars.put(column, Math.min(WIDEST_TEXT_CHARS, needed));
    }

    private static Stream<String> setups(BookResult result, PlanState state) {
        return result.bags().stream()
                .flatMap(bag -> IntStream.range(0, bag.options().slots().size())
                        .mapToObj(index -> new PlanRow(bag, index).setupInShort(state)));
    }

    /** Leaves out the columns that hold no choice in any slot, and what belongs to them. */
    private void choices(BookResult result, boolean kits) {
        boolean candidates = slots(result).anyMatch(SlotOptions::hasCandidates);
        if (!candidates) {
            unused.addAll(OF_CANDIDATES);
        }
        if (!kits) {
            unused.addAll(OF_KITS);
        }
        if (!candidates && !kits) {
            unused.add(PlanColumn.HEAD_MASS_CHANGE);
        }
        if (!isChosen(result, choice -> choice.settingText())) {
            unused.add(PlanColumn.LIVE_SETTING);
        }
        if (!isChosen(result, choice -> choice.weightingText())) {
            unused.add(PlanColumn.LIVE_WEIGHTING);
        }
        boolean lofts = isChosen(result, choice -> choice.bend().loftDeg());
        boolean lies = isChosen(result, choice -> choice.bend().lieDeg());
        if (!lofts) {
            unused.add(PlanColumn.LIVE_LOFT_BEND);
        }
        if (!lies) {
            unused.add(PlanColumn.LIVE_LIE_BEND);
        }
        if (!lofts && !lies) {
            unused.addAll(OF_BENDS);
        }
    }

    private static boolean isChosen(BookResult result, Function<Choice, Object> part) {
        return slots(result)
                .anyMatch(slot -> slot.options().stream()
                                .flatMap(option -> option.setup().stream())
                                .map(setup -> part.apply(setup.choice()))
                                .distinct()
                                .count()
                        > 1);
    }

    private static Stream<SlotOptions> slots(BookResult result) {
        return result.bags().stream().flatMap(bag -> bag.options().slots().stream());
    }

    public boolean hasCandidates() {
        return !unused.contains(PlanColumn.TODAY_CLUB);
    }

    /** The first column that is shown, where texts over the table begin. */
    PlanColumn firstShown() {
        return unused.contains(PlanColumn.GOLFER) ? PlanColumn.SLOT : PlanColumn.GOLFER;
    }

    /** All columns in order. */
    List<SheetColumn> columns() {
        return columns;
    }

    /** Whether nothing in the book needs it, or only formulas do. */
    boolean isHidden(SheetColumn column) {
        if (!(column instanceof PlanColumn plan) || plan.isHelper()) {
            return true;
        }
        return unused.contains(plan) || (LIMITS.containsKey(plan) && !limits.contains(LIMITS.get(plan)));
    }

    /** Its width; the chart has what the rest of the first screen leaves. */
    double widthChars(SheetColumn column) {
        if (column != PlanColumn.CHART) {
            return Math.max(column.widthChars(), textChars.getOrDefault(column, 0.0));
        }
        double takenChars = columns.stream()
                .filter(other -> other.index() < column.index() && !isHidden(other))
                .mapToDouble(this::widthChars)
                .sum();
        return Math.max(column.widthChars(), Math.min(WIDEST_CHART_CHARS, SCREEN_CHARS - takenChars));
    }
}
