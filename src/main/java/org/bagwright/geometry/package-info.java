/**
 * Sleeve, head and shaft: poses of a club and what gauges read on them, and the fit of head and sleeve to gauge readings.
 * Clubs, sleeves and readings come in, poses and fitted numbers go out. Imports {@code domain}.
 *
 * <p>Frames, all right-handed and for a right-handed head; the package {@code domain} says how they hold for a left-handed
 * one too.
 *
 * <ul>
 *   <li>Head frame: the head soled as designed, x toward the target, y toward the golfer (heel side), z up. The bore
 *       axis is {@code (0, cos L0, sin L0)}, the face normal {@code Rz(A0) (cos F0, 0, sin F0)}, the scorelines
 *       {@code Rz(A0) (0, 1, 0)}.
 *   <li>Bore frame: the head frame turned about x so that y runs up the bore: x toward the target, y along the bore, z
 *       more upright (12 on the clock).
 *   <li>Ground frame: x along the target line, y toward the golfer, z up. A pose is the turn from the head frame to the
 *       ground frame.
 * </ul>
 *
 * <p>Every turn is exact; nothing here assumes small angles.
 */
package org.bagwright.geometry;
