package org.bagwright.search;

import java.util.List;
import org.bagwright.domain.plan.BagPlan;

/**
 * The best plans of a bag with at most 0, 1, 2, ... changes.
 *
 * @param plans the plans, each proven best
 * @param settled whether more changes bring nothing after the last of them; if not, the time ended before the next
 */
public record BagSteps(List<BagPlan> plans, boolean settled) {
    public BagSteps {
        plans = List.copyOf(plans);
    }
}
