/** Impact and ball flight: what an option does to this golfer's ball. Flight frame: x down the range, y up, z to the right of the golfer's target line. */
package org.bagwright.flight;
