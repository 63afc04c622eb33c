package org.bagwright.workbook.cells;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.bagwright.workbook.text.CellContent;

/**
 * A heading of a table.
 *
 * @param name its text before a unit
 * @param unit what follows in brackets
 * @param squareBrackets whether those are square; in round ones anything may follow, and only a unit is read
 * @param index its column, from 0
 */
record Heading(String name, Optional<String> unit, boolean squareBrackets, int index) {
    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*([\\[(])([^\\])]*)[\\])]\\s*");

    /** Every text of a row as a heading; none where the sheet has no such row. */
    static List<Heading> allOf(XSSFRow row, CellContents contents) {
        List<Heading> headings = new ArrayList<>();
        if (row != null) {
            for (Cell cell : row) {
                if (contents.of(cell) instanceof CellContent.Words words) {
                    headings.add(of(words.text(), cell.getColumnIndex()));
                }
            }
        }
        return headings;
    }

    private static Heading of(String text, int index) {
        Matcher withUnit = WITH_UNIT.matcher(text);
        return withUnit.matches()
                ? new Heading(
                        withUnit.group(1),
                        Optional.of(withUnit.group(3)),
                        withUnit.group(2).equals("["),
                        index)
                : new Heading(text, Optional.empty(), false, index);
    }
}
