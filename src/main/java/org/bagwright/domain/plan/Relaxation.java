package org.bagwright.domain.plan;

/**
 * Something that holds a plan back, and what it would bring to let it go.
 *
 * @param cell where the book says it
 * @param what what would be let go, in words
 * @param gainPoints how much lower the penalty would be, points
 * @param fewerBreaks how many hard breaks fewer there would be, as in {@link BagScore}
 */
public record Relaxation(String cell, String what, double gainPoints, long fewerBreaks) {}
