/**
 * The sheets Plan and Settings: choice cells, formulas and the options that they look up. Imports {@code pen},
 * {@code cells} and {@code schema}.
 */
package org.bagwright.workbook.plan;
