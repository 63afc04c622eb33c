package org.bagwright.domain.book;

/** The side from which the golfer plays. Both hands share one set of numbers, see the package description. */
public enum Hand {
    RIGHT,
    LEFT
}
