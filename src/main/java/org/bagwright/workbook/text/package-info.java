/**
 * Numbers, units, clock hours and temperatures as fitters type them. Text comes in, numbers in SI or degrees go out.
 * Imports {@code domain}.
 */
package org.bagwright.workbook.text;
