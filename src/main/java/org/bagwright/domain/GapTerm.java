package org.bagwright.domain;

/**
 * One gap between neighbouring carrying clubs and what it costs.
 *
 * @param fromIndex position of the longer club in the bag
 * @param toIndex position of the shorter club in the bag
 * @param gapM carry of the longer less carry of the shorter, metres
 * @param wishM the gap wanted, metres
 * @param penaltyPoints what the difference costs, points
 * @param hardBreaks broken musts, thousandths of a tolerance, and carry that does not fall
 */
public record GapTerm(int fromIndex, int toIndex, double gapM, double wishM, double penaltyPoints, long hardBreaks) {}
