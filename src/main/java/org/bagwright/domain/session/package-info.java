/**
 * Shots of a session in a file: the file as a plain table of texts comes in, shots that fit a book and what was left out go
 * out. Imports {@code book} and {@code club}.
 */
package org.bagwright.domain.session;
