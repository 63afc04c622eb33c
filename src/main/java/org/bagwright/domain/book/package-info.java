/**
 * Everything that the input sheets of a book say, one record a row, and the measures by which a plan is judged. Imports
 * {@code club}.
 */
package org.bagwright.domain.book;
