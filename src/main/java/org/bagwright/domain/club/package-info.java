/**
 * A club as its row of the book states it: identity, head, parts, set-up of today, freedom and targets; and the sleeves and
 * kits of weights that fit it. Imports {@code units}.
 */
package org.bagwright.domain.club;
