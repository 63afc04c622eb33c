package org.bagwright.learning;

/**
 * Chances that were stated as about the same, and how often it came so.
 *
 * @param stated the mean of them, from 0 to 1
 * @param came the share that came, from 0 to 1
 * @param count how many there are
 */
public record StatedChance(double stated, double came, int count) {}
