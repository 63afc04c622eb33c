/**
 * All other result sheets, and the copy of the book that takes them. A planned book comes in, an .xlsx file goes
 * out. Imports {@code plan}, {@code pen} and {@code cells}.
 */
package org.bagwright.workbook.result;
