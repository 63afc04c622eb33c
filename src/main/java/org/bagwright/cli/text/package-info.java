/** What a terminal shows. Results come in, lines go out. Imports {@code planning}, {@code files} and {@code domain}. */
package org.bagwright.cli.text;
