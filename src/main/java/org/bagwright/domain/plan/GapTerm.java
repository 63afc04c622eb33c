package org.bagwright.domain.plan;

/**
 * The gap between two neighbouring carrying clubs and what it costs.
 *
 * @param fromIndex position in the bag of the longer club, by slot
 * @param toIndex position in the bag of the next carrying club
 * @param gapM carry of the first less carry of the second, metres
 * @param wishM the gap wanted, metres
 * @param penaltyPoints what the deviation costs, points
 * @param hardBreaks broken hard limits: the gap's must, and carries that do not fall
 */
public record GapTerm(int fromIndex, int toIndex, double gapM, double wishM, double penaltyPoints, long hardBreaks) {}
