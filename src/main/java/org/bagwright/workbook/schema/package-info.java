/** Sheet names, columns and settings: what the reader looks for and the blank book offers. Imports {@code text}. */
package org.bagwright.workbook.schema;
