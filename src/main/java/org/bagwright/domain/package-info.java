/**
 * Immutable records of a fitter's book and of its plan, with their checks, in the packages below this one.
 *
 * <p>Frames: the head frame is right-handed, for a right-handed head sitting as designed: x toward the target, y toward
 * the golfer (heel side), z up. A left-handed club is the mirror image in y, so the numbers here, given as closed and
 * open, upright and flat, hold for either hand. Angles are degrees and say so in their names; a face is closed
 * positive; a loft bend is positive when it makes the club weaker; a lie bend is positive when it makes it more
 * upright. Everything else is SI unless the name ends in another unit.
 */
package org.bagwright.domain;
