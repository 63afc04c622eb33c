/**
 * Shots of a session in a file: the file as a plain table of texts comes in, shots that fit a book and what was left out go
 * out. What was predicted of the shots of a day, and how they came out. Imports {@code book}, {@code club}, {@code units} and
 * {@code text}.
 */
package org.bagwright.domain.session;
