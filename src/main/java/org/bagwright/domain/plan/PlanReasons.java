package org.bagwright.domain.plan;

import java.util.List;

/**
 * Why a bag is planned as it is.
 *
 * @param steps the best plans with at most 0, 1, 2, ... changes, until more changes gain nothing
 * @param others other good plans
 * @param relaxations what holds the plan back, the greatest gain first
 * @param unsettled what could not be settled in the time, in words
 */
public record PlanReasons(
        List<Step> steps, List<OtherPlan> others, List<Relaxation> relaxations, List<String> unsettled) {
    /** Nothing worked out yet. */
    public static final PlanReasons NONE = new PlanReasons(List.of(), List.of(), List.of(), List.of());

    public PlanReasons {
        steps = List.copyOf(steps);
        others = List.copyOf(others);
        relaxations = List.copyOf(relaxations);
        unsettled = List.copyOf(unsettled);
    }
}
