/**
 * Files of shots on their way into a book: a workbook of shots goes out as plain tables of texts; shots come in and are written
 * as rows of the sheet Shots into a copy of the book. Imports {@code cells}, {@code schema}, {@code text} and {@code domain}.
 */
package org.bagwright.workbook.shots;
