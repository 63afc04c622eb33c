/**
 * What gauge readings say about heads and sleeves, and the cells to correct. A fit of readings makes these records, the
 * terminal, JSON and the book show them. Imports {@code book}, {@code club} and {@code units}.
 */
package org.bagwright.domain.gauge;
