/**
 * Files of shots: a file or its plain table of texts comes in, with the book that its shots are for; shots with their set-up,
 * or the reason why a row or the file is refused, go out. No format of any maker is known here: headings are understood by the
 * words of the trade, and units are told by the file or the person, never guessed. The only user of Commons CSV. Imports
 * {@code flight} and {@code domain}.
 */
package org.bagwright.sessions;
