package org.bagwright.workbook.cells;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.schema.Column;
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

    /** Headings that a fitter uses for himself, on any sheet. */
    private static final Set<String> OWN =
            Set.of("note", "notes", "comment", "comments", "remark", "remarks", "memo", "own notes", "my notes");

    /** Whether the fitter has marked it by a star as his own: it is not read, and no message mentions it. */
    boolean isOwn() {
        return name.startsWith("*");
    }

    /** Whether it is a word for notes, which no message mentions where the sheet has no such column. */
    boolean isNote() {
        return OWN.contains(CloseNames.key(name));
    }

    /** Whether it is this column's own heading and not another word for it. */
    boolean isCalled(Column column) {
        return CloseNames.key(name).equals(CloseNames.key(column.header()));
    }

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
