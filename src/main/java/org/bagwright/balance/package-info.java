/**
 * Mass, balance, swingweight and inertia of a club in any of its weightings, how to match it to another, and the limits
 * of the equipment rules. A club and its weighting come in, its numbers go out. Imports {@code domain}.
 *
 * <p>Frames, for a right-handed club; a left-handed one is its mirror image, so that y is toward the golfer there too.
 *
 * <ul>
 *   <li>Head frame: the head soled as designed, its origin in the centre of gravity of the head with empty ports: x toward
 *       the target, y toward the golfer (heel side), z up. The shaft points up along {@code b = (0, cos lie, sin lie)}.
 *   <li>Along the shaft: metres from the butt end toward the head. The centre of gravity of the head with empty ports is
 *       at the club length; a piece at {@code r} in the head frame is {@code -b . r} further on.
 * </ul>
 *
 * <p>The lie is the stated one. It may differ from the design lie by a sleeve's bend: 2 degrees move a 12 g piece that sits
 * 40 mm from the head's centre by 1.4 mm along the shaft, 0.02 points of swingweight.
 */
package org.bagwright.balance;
