/** Sleeve, head and shaft: poses of a club and what gauges read on them. Frames are those of the package {@code domain}. */
package org.bagwright.geometry;
