/**
 * How the tool writes a sheet: the one look of its cells, its charts, and how it prints. A sheet of the library comes in;
 * the same sheet, filled, goes out. Imports {@code domain}.
 */
package org.bagwright.workbook.pen;
