package org.bagwright.domain.book;

/**
 * An input cell that was written.
 *
 * @param cell where, {@code Sheet!C7}
 * @param what what it holds, such as {@code loft}
 * @param before what was there before
 * @param after what is there now
 */
public record CellChange(String cell, String what, String before, String after) {}
