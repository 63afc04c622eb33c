package org.bagwright.domain.plan;

/**
 * A restriction of a plan, and what it would gain to drop it.
 *
 * @param cell where the book says it
 * @param what what would be dropped, in words
 * @param gainPoints how much lower the penalty would be, points
 * @param fewerBreaks how many hard breaks fewer there would be, as in {@link BagScore}
 */
public record Relaxation(String cell, String what, double gainPoints, long fewerBreaks) {}
