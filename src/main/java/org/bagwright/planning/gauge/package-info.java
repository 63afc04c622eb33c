/** Gauge readings of a book: fits club by club and the corrections that follow. Imports {@code geometry} and {@code domain}. */
package org.bagwright.planning.gauge;
