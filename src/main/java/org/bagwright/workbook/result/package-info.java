/**
 * The result sheets but for Plan, Settings and Ladder, and the copies of a book into which results are written. A planned book,
 * compared books or gauged numbers come in, an .xlsx file goes out. Imports {@code ladder}, {@code plan}, {@code pen}, {@code cells},
 * {@code schema} and {@code text}.
 */
package org.bagwright.workbook.result;
