/**
 * What gauge readings say about heads and sleeves, and the cells to correct. Imports {@code book} and {@code club}.
 */
package org.bagwright.domain.gauge;
