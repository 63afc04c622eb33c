/**
 * The content of the input sheets: a book with its settings, golfers, clubs, shots and readings, mostly one record a row,
 * and the measures by which a plan is judged. The reader makes these records; everything else takes them. Imports
 * {@code club}, {@code units} and {@code text}.
 */
package org.bagwright.domain.book;
