/** Units of a book, limits of what can be built, and the checks that records state. Imports {@code text}. */
package org.bagwright.domain.units;
