package org.bagwright.workbook.plan;

import java.util.Locale;
import java.util.Optional;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.OwnTerms;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.SpreadTerm;

/** The terms of the penalty, in the order in which the sheet Plan shows them. */
enum PlanTerm {
    LOFT,
    LIE,
    SITS,
    CARRY,
    GAP,
    SWINGWEIGHT,
    SPREAD,
    CHANGE;

    /** Its name, as in the names of its tolerance and importance. */
    String measure() {
        return name().toLowerCase(Locale.ROOT);
    }

    String heading() {
        return name().charAt(0) + measure().substring(1);
    }

    PlanColumn column(PlanState state) {
        return PlanColumn.of(state, name() + "_TERM");
    }

    /** What it costs in one slot, points. */
    double points(Option option, Optional<GapTerm> gap, Optional<SpreadTerm> spread) {
        OwnTerms terms = option.terms();
        return switch (this) {
            case LOFT -> terms.loftPoints();
            case LIE -> terms.liePoints();
            case SITS -> terms.sitsPoints();
            case CARRY -> terms.carryPoints();
            case GAP -> gap.map(GapTerm::penaltyPoints).orElse(0.0);
            case SWINGWEIGHT -> terms.swingweightPoints();
            case SPREAD -> spread.map(SpreadTerm::penaltyPoints).orElse(0.0);
            case CHANGE -> terms.changePoints();
        };
    }
}
