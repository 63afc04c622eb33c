/** Everything that the input sheets of a book say, one record a row. Imports {@code club}. */
package org.bagwright.domain.book;
