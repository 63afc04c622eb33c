package org.bagwright.domain.plan;

/**
 * How good one choice of options for one bag is; less is better, hard breaks first.
 *
 * @param hardBreaks broken hard limits, thousandths of a tolerance for measures, 1000 a piece for the others
 * @param penaltyPoints the penalty, points
 */
public record BagScore(long hardBreaks, double penaltyPoints) {}
