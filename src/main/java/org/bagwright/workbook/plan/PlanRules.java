package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ClosedReason;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.Broken;
import org.bagwright.workbook.settings.SettingsColumn;
import org.bagwright.workbook.settings.SettingsSheet;

/** What the live choice of one slot breaks, on the sheet Plan: limits, musts, closed options and the stock. */
final class PlanRules {
    /** A hair beyond a limit is noise of the arithmetic. */
    static final double NOISE = 1e-9;

    private static final String BEYOND_NOISE = ">0.000000001";

    private static final List<PlanColumn> BEYOND =
            List.of(PlanColumn.BEYOND_SITS, PlanColumn.BEYOND_GAP, PlanColumn.BEYOND_CARRY, PlanColumn.BEYOND_LANDING);

    private final PlanRowPen pen;
    private final SettingsSheet settings;
    private final VerdictLine line;
    private final PlanVerdict verdict;
    private final PlanPlace place;
    private final PlanRow values;

    PlanRules(PlanRowPen pen, SettingsSheet settings, VerdictLine line, PlanVerdict verdict) {
        this.pen = pen;
        this.settings = settings;
        this.line = line;
        this.verdict = verdict;
        this.place = pen.place();
        this.values = pen.values();
    }

    void write() {
        look(PlanColumn.OPEN_LIMIT, PlanColumn.MOST_OPEN, LimitKind.MOST_OPEN, -1);
        look(PlanColumn.CLOSED_LIMIT, PlanColumn.MOST_CLOSED, LimitKind.MOST_CLOSED, 1);
        beyond(PlanColumn.BEYOND_SITS, PlanColumn.LIVE_SITS, PlanColumn.OPEN_LIMIT, PlanColumn.CLOSED_LIMIT);
        beyond(PlanColumn.BEYOND_GAP, PlanColumn.LIVE_GAP, PlanColumn.GAP_LEAST, PlanColumn.GAP_MOST);
        beyond(PlanColumn.BEYOND_CARRY, PlanColumn.LIVE_CARRY, PlanColumn.CARRY_LEAST, PlanColumn.CARRY_MOST);
        landing();
        limits();
        musts();
        closed();
        stock();
        bag();
        pen.text(PlanColumn.LIVE_FIT, Role.SHRUNK_COUNT, fit(), verdict.word(values));
    }

    /** A look that a person may write as a number, which means the side of its column, or in words. */
    private void look(PlanColumn column, PlanColumn written, LimitKind kind, int side) {
        String cell = place.at(written);
        String size = "VALUE(LEFT(" + cell + ",FIND(\" \"," + cell + ")-1))";
        String words = "IFERROR(" + size + "*IF(ISNUMBER(SEARCH(\"closed\"," + cell + ")),1,-1),0)";
        String formula =
                "IF(" + cell + "=\"\",\"\",IF(ISNUMBER(" + cell + ")," + side + "*ABS(" + cell + ")," + words + "))";
        pen.number(column, "0.0##", formula, values.golfer().limits().valueMeasureUnits(kind));
    }

    private void beyond(PlanColumn column, PlanColumn found, PlanColumn least, PlanColumn most) {
        String figure = place.at(found);
        String formula = "IF(ISNUMBER(" + figure + "),MAX(0,IF(ISNUMBER(" + place.at(least) + ")," + place.at(least)
                + "-" + figure + ",0),IF(ISNUMBER(" + place.at(most) + ")," + figure + "-" + place.at(most) + ",0)),0)";
        beyond(column, formula);
    }

    private void landing() {
        String figure = place.at(PlanColumn.LIVE_LANDING);
        String least = place.at(PlanColumn.LANDING_LEAST);
        beyond(
                PlanColumn.BEYOND_LANDING,
                "IF(AND(ISNUMBER(" + figure + "),ISNUMBER(" + least + ")),MAX(0," + least + "-" + figure + "),0)");
    }

    private void beyond(PlanColumn column, String formula) {
        LimitKind.Quantity quantity = quantity(column);
        double beyond = values.beyondMeasureUnits(quantity);
        boolean distance = quantity == LimitKind.Quantity.GAP || quantity == LimitKind.Quantity.CARRY;
        OptionalDouble shown = OptionalDouble.of(beyond);
        pen.number(column, "0.0##", formula, distance ? pen.distance(shown) : shown);
    }

    private static LimitKind.Quantity quantity(PlanColumn column) {
        return switch (column) {
            case BEYOND_SITS -> LimitKind.Quantity.SITS;
            case BEYOND_GAP -> LimitKind.Quantity.GAP;
            case BEYOND_CARRY -> LimitKind.Quantity.CARRY;
            default -> LimitKind.Quantity.LANDING;
        };
    }

    private void limits() {
        String formula = BEYOND.stream()
                .map(column -> "IF(" + place.at(column) + BEYOND_NOISE + ",1,0)")
                .collect(Collectors.joining("+"));
        pen.number(PlanColumn.LIVE_LIMITS, "0", formula, verdict.count(values, Broken.Kind.LIMIT));
    }

    private void musts() {
        String gap = place.at(PlanColumn.LIVE_GAP);
        String count = "IF(AND(ISNUMBER(" + gap + ")," + gap + "<=0),1,0)";
        String first = "\"\"";
        List<MissColumn> misses = MissColumn.all();
        for (int index = misses.size() - 1; index >= 0; index--) {
            MissColumn miss = misses.get(index);
            count = "IF(" + isMissed(miss) + ",1,0)+" + count;
            first = "IF(" + isMissed(miss) + ",\"" + miss.measure().label() + "\"," + first + ")";
        }
        pen.text(PlanColumn.LIVE_MUST, Role.TEXT, first, verdict.first(values, Broken.Kind.MUST));
        pen.number(PlanColumn.LIVE_MUSTS, "0", count, verdict.count(values, Broken.Kind.MUST));
    }

    /** Whether the must of a measure is missed. */
    private String isMissed(MissColumn column) {
        String miss = place.at(column);
        return "AND(" + PlanAims.must(column.measure()) + "=\"yes\",ISNUMBER(" + miss + ")," + miss + ">1.000000001)";
    }

    private void closed() {
        Option live = values.option(PlanState.LIVE);
        String formula = pen.formulas().looked(PlanState.LIVE, SettingsColumn.CLOSED, place);
        String found = place.at(PlanColumn.LIVE_CLOSED);
        pen.text(
                PlanColumn.LIVE_CLOSED,
                Role.TEXT,
                "IF(" + place.at(PlanColumn.LIVE_ROW) + "=0,\"\"," + formula + "&\"\")",
                ClosedReason.labels(live.closedReasons()));
        pen.number(PlanColumn.LIVE_SHUT, "0", "IF(" + found + "=\"\",0,1)", live.open() ? 0 : 1);
    }

    private void stock() {
        String row = place.at(PlanColumn.LIVE_ROW);
        for (StockColumn column : StockColumn.all(line.stock())) {
            String taken = "INDEX(" + settings.lookupTaken(column.item()) + "," + row + ")";
            int takes = values.option(PlanState.LIVE).takes().get(column.item());
            pen.number(column, "0", "IF(" + row + "=0,0," + taken + ")", takes);
        }
        pen.number(
                PlanColumn.LIVE_SHORT,
                "0",
                "IF(" + line.takesShort(place.row()) + ">0,1,0)",
                verdict.isShort(values) ? 1 : 0);
    }

    /** In the first row of a golfer: the most changes, and the clubs in a bag. */
    private void bag() {
        if (!values.isFirst()) {
            pen.blank(PlanColumn.LIVE_BAG, Role.NUMBER);
            return;
        }
        String changes = "SUM(" + place.bag(PlanColumn.LIVE_CHANGES) + ")";
        String clubs = "COUNTIF(" + place.bag(PlanColumn.LIVE_CLUB) + ",\"<>" + Option.LEFT_OUT + "\")";
        String most = values.golfer().mostChanges().isPresent()
                ? "IF(" + changes + ">" + values.golfer().mostChanges().getAsInt() + ",1,0)+"
                : "";
        pen.number(
                PlanColumn.LIVE_BAG,
                "0",
                most + "IF(" + clubs + ">" + BagOptions.MOST_CLUBS + ",1,0)",
                values.brokenOfBag());
    }

    /** The first of what is wrong, in a word. */
    private String fit() {
        String closed = place.at(PlanColumn.LIVE_CLOSED);
        String must = place.at(PlanColumn.LIVE_MUST);
        String wrong = "IF(" + place.at(PlanColumn.LIVE_SHORT) + ">0,\"not in stock\",IF("
                + place.at(PlanColumn.LIVE_LIMITS) + ">0,\"limit: \"&" + limit() + ","
                + pen.formulas().order(place)
                + "IF(" + must + "<>\"\",\"must: \"&" + must + ","
                + pen.formulas().miss(place) + "))))";
        String carried = pen.formulas().unlessLeftOut(place, wrong);
        return "IF(" + place.at(PlanColumn.LIVE_ROW) + "=0,\"not an option\",IF(" + closed + "<>\"\",\"closed: \"&"
                + closed + "," + carried + "))";
    }

    private String limit() {
        return "IF(" + place.at(PlanColumn.BEYOND_SITS) + BEYOND_NOISE + ",\"sits\",IF("
                + place.at(PlanColumn.BEYOND_GAP) + BEYOND_NOISE + ",\"gap\",IF(" + place.at(PlanColumn.BEYOND_CARRY)
                + BEYOND_NOISE + ",\"carry\",\"landing\")))";
    }
}
