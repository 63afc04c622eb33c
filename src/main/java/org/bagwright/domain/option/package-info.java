/**
 * Every way to fill a slot of a bag, with the numbers that geometry, flight and balance give it, what is wanted of them
 * and what they cost by measure. Made from a book, taken by the search and the sheets. Imports {@code book}, {@code club},
 * {@code units} and {@code text}.
 */
package org.bagwright.domain.option;
