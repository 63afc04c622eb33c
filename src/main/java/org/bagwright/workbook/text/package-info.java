/**
 * Numbers, units, clock hours, looks and temperatures as fitters type them, and what a plan remembers as text. Text comes in,
 * numbers in SI or degrees go out.
 * Imports {@code domain}.
 */
package org.bagwright.workbook.text;
