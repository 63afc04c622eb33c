package org.bagwright.domain.plan;

/**
 * The best plan for a bag with at most so many changes.
 *
 * @param changes the most items that may change
 * @param state the plan
 */
public record Step(int changes, BagState state) {}
