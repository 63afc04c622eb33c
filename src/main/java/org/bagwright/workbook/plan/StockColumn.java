package org.bagwright.workbook.plan;

import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.workbook.settings.SheetColumn;

/**
 * A column of the sheet Plan with the pieces of one item of the stock that the live choices take, after all others.
 *
 * @param item the place of the item in the stock
 * @param limit the item and how many there are
 */
record StockColumn(int item, StockLimit limit) implements SheetColumn {

    static List<StockColumn> all(List<StockLimit> stock) {
        return IntStream.range(0, stock.size())
                .mapToObj(item -> new StockColumn(item, stock.get(item)))
                .toList();
    }

    @Override
    public int index() {
        return PlanColumn.LIVE_BAG.index() + 1 + item;
    }

    @Override
    public String heading() {
        return "Live takes " + limit.item().inWords();
    }

    @Override
    public double widthChars() {
        return 10;
    }

    @Override
    public String group() {
        return PlanColumn.LIVE_BAG.group();
    }
}
