/**
 * The fitter's .xlsx book: read into records, written back with result sheets. The only user of Apache POI, and the
 * owner of every sheet name, heading and cell address.
 * Its subpackages import {@code files} and {@code domain}.
 */
package org.bagwright.workbook;
