/**
 * From records to options: every set-up of every club with its numbers, and what was assumed. A book comes in, bags of
 * options and messages go out. Imports {@code geometry}, {@code flight}, {@code balance} and {@code domain}.
 */
package org.bagwright.planning.options;
