/**
 * The sheet Settings: every option of a book with its numbers, and the lists of the choice cells. A result comes in; the
 * ranges that formulas of other sheets look up go out. Imports {@code pen} and {@code schema}.
 */
package org.bagwright.workbook.settings;
