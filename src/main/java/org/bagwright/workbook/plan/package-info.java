/**
 * The sheet Plan: choice cells, formulas, totals, and what a person first sees of it. {@link
 * org.bagwright.workbook.plan.PlanColumn} lists the columns, {@link org.bagwright.workbook.plan.PlanBlock} the rows, one {@link
 * org.bagwright.workbook.plan.TermFormula} a measure makes the penalty. Imports {@code settings}, {@code pen}, {@code cells} and
 * {@code schema}.
 */
package org.bagwright.workbook.plan;
