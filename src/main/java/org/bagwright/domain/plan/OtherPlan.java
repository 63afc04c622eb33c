package org.bagwright.domain.plan;

/**
 * Another good plan for a bag, and how it was made to differ.
 *
 * @param difference what makes it different, in words
 * @param state the plan
 */
public record OtherPlan(String difference, BagState state) {}
