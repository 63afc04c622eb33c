/**
 * The sheets Plan and Settings: choice cells, formulas and the options that they look up. {@link
 * org.bagwright.workbook.plan.PlanColumn} lists the columns, one {@link org.bagwright.workbook.plan.TermFormula} a measure
 * makes the penalty. Imports {@code pen}, {@code cells} and {@code schema}.
 */
package org.bagwright.workbook.plan;
