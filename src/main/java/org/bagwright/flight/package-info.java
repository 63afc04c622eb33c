/**
 * Impact and ball flight: a head and a delivery come in, launch and flight go out. Flight frame: x down the range, y up, z to
 * the right of the golfer's target line. Angles are measured from the horizontal, upward positive; backspin is positive.
 * Imports {@code domain}.
 */
package org.bagwright.flight;
