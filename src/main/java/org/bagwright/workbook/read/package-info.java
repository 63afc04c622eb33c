/**
 * Input sheets to records. Tables come in, a checked book or all its problems go out. Imports {@code cells} and
 * {@code schema}.
 */
package org.bagwright.workbook.read;
