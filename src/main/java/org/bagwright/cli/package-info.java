/**
 * Arguments, printing and exit codes. What a person types comes in, an exit code goes out. Imports its subpackages,
 * {@code planning}, {@code files} and {@code domain}.
 */
package org.bagwright.cli;
