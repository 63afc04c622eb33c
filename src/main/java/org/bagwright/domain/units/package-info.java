/**
 * Units of a book, limits of what can be built, and the checks that the constructors of records use. Imports {@code text}.
 */
package org.bagwright.domain.units;
