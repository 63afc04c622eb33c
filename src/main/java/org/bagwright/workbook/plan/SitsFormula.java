package org.bagwright.workbook.plan;

import java.util.Optional;
import org.bagwright.domain.book.Measure;
import org.bagwright.workbook.settings.SettingsColumn;

/**
 * The look at address against the range that the golfer accepts.
 *
 * @param looked how numbers of an option are looked up
 */
record SitsFormula(PlanFormulas looked) implements TermFormula {

    @Override
    public String points(PlanState state, PlanPlace place) {
        String sits = looked.index(state, SettingsColumn.SITS, place);
        return "IF(" + sits + "=\"\",0,IFERROR(" + PlanAims.importance(Measure.SITS) + "*(" + outside(sits, place) + "/"
                + PlanAims.tolerance(Measure.SITS) + ")^2,\"?\"))";
    }

    @Override
    public Optional<String> miss(PlanPlace place) {
        String sits = place.at(PlanColumn.LIVE_SITS);
        return Optional.of(
                "IF(" + sits + "=\"\",0," + outside(sits, place) + "/" + PlanAims.tolerance(Measure.SITS) + ")");
    }

    private static String outside(String sits, PlanPlace place) {
        String open = place.at(PlanColumn.OPEN_LIMIT);
        String closed = place.at(PlanColumn.CLOSED_LIMIT);
        return "MAX(0,IF(" + closed + "=\"\",0," + sits + "-" + closed + "),IF(" + open + "=\"\",0," + open + "-" + sits
                + "))";
    }
}
