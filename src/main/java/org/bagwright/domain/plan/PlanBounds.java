package org.bagwright.domain.plan;

import org.bagwright.domain.units.Checks;

/**
 * What no choice for a book is below, level by level: each holds for the choices that are as good as the plan on the levels
 * before it.
 *
 * @param hard pieces, changes and clubs beyond what there is or may be
 * @param mustThousandths broken musts and limits, thousandths of a tolerance; for choices with as few hard ones as the plan
 * @param penaltyPoints the penalty; for choices that break as little as the plan
 */
public record PlanBounds(long hard, long mustThousandths, double penaltyPoints) {

    public PlanBounds {
        Checks.finite(penaltyPoints, "bound");
    }

    /** Whether no choice keeps everything. */
    public boolean breakSomething() {
        return hard > 0 || mustThousandths > 0;
    }
}
