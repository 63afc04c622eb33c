package org.bagwright.workbook.plan;

import java.util.List;
import org.bagwright.domain.option.StockLimit;

/**
 * The line over the sheet Plan with what the live choices break, as a formula.
 *
 * @param firstRow the row of the first slot
 * @param lastRow the row of the last slot
 * @param ownRow the row of the line, which also holds how many pieces of each item are missing
 * @param stock what all bags share
 */
record VerdictLine(int firstRow, int lastRow, int ownRow, List<StockLimit> stock) {
    static final String ALL_KEPT = "all limits kept, all musts met, enough in stock.";
    static final String LIMITS = "limits broken: ";
    static final String MUSTS = ", musts missed: ";
    static final String SHORT = ", items short in stock: ";
    static final String SLOTS_SHORT = ", slots short in stock: ";
    static final String CLOSED = ", closed choices: ";
    static final String END = ".";
    private static final String NO_OPTION = "a row holds a choice that is not an option.";

    /** What the live choices of the book break. */
    String formula() {
        return formula(firstRow, lastRow, SHORT, shortItems());
    }

    /** What those of a golfer break. */
    String formula(PlanBlock block) {
        String slots = sum(PlanColumn.LIVE_SHORT, block.firstRow(), block.lastRow());
        return formula(block.firstRow(), block.lastRow(), SLOTS_SHORT, slots);
    }

    private static String formula(int first, int last, String shortWords, String shortCount) {
        String limits = sum(PlanColumn.LIVE_LIMITS, first, last) + "+" + sum(PlanColumn.LIVE_BAG, first, last);
        String musts = sum(PlanColumn.LIVE_MUSTS, first, last);
        String closed = sum(PlanColumn.LIVE_SHUT, first, last);
        String counts = quoted(LIMITS) + "&(" + limits + ")&" + quoted(MUSTS) + "&" + musts + "&" + quoted(shortWords)
                + "&" + shortCount + "&" + quoted(CLOSED) + "&" + closed + "&" + quoted(END);
        String none = limits + "+" + musts + "+" + shortCount + "+" + closed + "=0";
        return "IF(COUNTIF(" + PlanColumn.LIVE_ROW.from(first, last) + ",0)>0," + quoted(NO_OPTION) + ",IF(" + none
                + "," + quoted(ALL_KEPT) + "," + counts + "))";
    }

    private static String sum(PlanColumn column, int first, int last) {
        return "SUM(" + column.from(first, last) + ")";
    }

    private String shortItems() {
        return stock.isEmpty() ? "0" : "COUNTIF(" + inRow(ownRow) + ",\">0\")";
    }

    /** The cells of all stock columns in a row. */
    private String inRow(int row) {
        List<StockColumn> columns = StockColumn.all(stock);
        return columns.get(0).at(row) + ":" + columns.get(columns.size() - 1).at(row);
    }

    /** How many pieces of an item the live choices take beyond those that there are. */
    String missing(StockColumn column) {
        return "MAX(0,SUM(" + column.from(firstRow, lastRow) + ")-"
                + column.limit().available() + ")";
    }

    /** Whether a row takes a piece of an item of which there are too few: more than 0 if it does. */
    String takesShort(int row) {
        return stock.isEmpty() ? "0" : "SUMPRODUCT(" + inRow(row) + "," + inRow(ownRow) + ")";
    }

    private static String quoted(String text) {
        return "\"" + text + "\"";
    }
}
