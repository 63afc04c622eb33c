/** The blank book. Imports {@code schema} and {@code pen}. */
package org.bagwright.workbook.template;
