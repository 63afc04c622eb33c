/**
 * From records to options: every set-up of every club with its numbers, and what was assumed. Imports {@code
 * geometry}, {@code flight}, {@code balance}.
 */
package org.bagwright.planning.options;
