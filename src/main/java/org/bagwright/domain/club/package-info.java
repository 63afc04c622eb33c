/**
 * A club as its row of the book states it: head, sleeve, kit of weights, bends and targets, with what is set on it.
 * Imports {@code units} and {@code text}.
 */
package org.bagwright.domain.club;
