/** Gauge readings of a book: fits club by club and the corrections that follow. Imports {@code geometry}. */
package org.bagwright.planning.gauge;
