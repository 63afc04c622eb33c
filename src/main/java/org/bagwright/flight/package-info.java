/**
 * Impact and ball flight: what an option does to this golfer's ball. Flight frame: x down the range, y up, z to the right
 * of the golfer's target line. Angles are measured from the horizontal, upward positive; backspin is positive.
 */
package org.bagwright.flight;
