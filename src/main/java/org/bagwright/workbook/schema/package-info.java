/**
 * Sheet names, columns and settings: what the reader looks for, the template offers and the results are called. Imports
 * {@code domain} and {@code text}.
 */
package org.bagwright.workbook.schema;
