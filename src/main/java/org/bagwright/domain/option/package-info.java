/**
 * Every way to fill a slot of a bag, with the numbers that geometry, flight and balance give it, what is wanted of them
 * and what they cost by measure. Imports {@code book} and {@code club}.
 */
package org.bagwright.domain.option;
