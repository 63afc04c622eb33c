package org.bagwright.workbook.cells;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The order of a book's sheets before its result sheets are replaced.
 *
 * @param names the names of all sheets, the fitter's and the tool's
 */
public record SheetOrder(List<String> names) {

    public SheetOrder {
        names = List.copyOf(names);
    }

    public static SheetOrder of(XSSFWorkbook workbook) {
        return new SheetOrder(IntStream.range(0, workbook.getNumberOfSheets())
                .mapToObj(workbook::getSheetName)
                .toList());
    }

    /**
     * Puts every sheet back where it was; a result sheet that was not there goes after the one before it.
     *
     * @param results the names of the result sheets that are in the book now, in their usual order
     */
    public void restore(XSSFWorkbook workbook, List<String> results) {
        List<String> wanted = new ArrayList<>(names);
        wanted.removeIf(name -> workbook.getSheet(name) == null);
        for (int index = 0; index < results.size(); index++) {
            String name = results.get(index);
            if (!wanted.contains(name)) {
                int before = index == 0 ? -1 : wanted.indexOf(results.get(index - 1));
                wanted.add(before < 0 ? placeOfFirst(wanted, results) : before + 1, name);
            }
        }
        for (int place = 0; place < wanted.size(); place++) {
            if (workbook.getSheetIndex(wanted.get(place)) != place) {
                workbook.setSheetOrder(wanted.get(place), place);
            }
        }
    }

    /** Where the first result sheet goes if it was not there: before the others, or at the end. */
    private static int placeOfFirst(List<String> wanted, List<String> results) {
        return IntStream.range(0, wanted.size())
                .filter(place -> results.contains(wanted.get(place)))
                .findFirst()
                .orElse(wanted.size());
    }
}
