/**
 * Input sheets to records. Tables come in, a checked book or all its problems go out. Imports {@code domain},
 * {@code files}, {@code schema}, {@code text}, {@code cells}, and {@code plan} for the choices on an earlier sheet Plan.
 */
package org.bagwright.workbook.read;
