/**
 * An .xlsx file as rows of typed cells, every problem with its address. A path comes in, tables and findings go out.
 * Imports {@code schema}, {@code text} and {@code files}.
 */
package org.bagwright.workbook.cells;
