/**
 * An .xlsx file as rows of typed cells, every problem with its address, and what of a fitter's book must survive when it
 * is written. A path comes in, tables and findings go out. Imports {@code domain}, {@code files}, {@code schema} and
 * {@code text}.
 */
package org.bagwright.workbook.cells;
