/**
 * What a person changed on the sheet Plan of an earlier run in the cells that say what is wanted, taken into the input
 * sheets. A workbook comes in; changed cells and messages go out. Imports {@code plan}, {@code cells}, {@code schema},
 * {@code text} and {@code domain}.
 */
package org.bagwright.workbook.edits;
