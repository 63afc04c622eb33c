package org.bagwright.workbook.read;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.GolferColumn;
import org.bagwright.workbook.schema.InputSheet;
import org.bagwright.workbook.schema.SheetSchema;
import org.bagwright.workbook.schema.StartSetting;

/**
 * Finds the sheets of a book that are read, and reports what is wrong with them as sheets.
 *
 * @param workbook the book
 * @param context how its cells are read
 */
record BookSheets(XSSFWorkbook workbook, BookContext context) {
    private static final int HEADINGS_SHOWN = 6;

    /** The same sheets, with numbers in other units. */
    BookSheets in(Units units) {
        return new BookSheets(workbook, context.in(units));
    }

    /** Reports sheets that are there twice, and warns of hidden ones: they are easily forgotten, but count. */
    void check() {
        for (InputSheet sheet : InputSheet.values()) {
            requireOnce(sheet.schema().name(), found -> sheet.schema().isCalled(found.getSheetName()));
        }
        requireOnce(StartSetting.SHEET, BookSheets::isStart);
        for (XSSFSheet sheet : sheets()) {
            boolean read =
                    isStart(sheet) || InputSheet.called(sheet.getSheetName()).isPresent();
            if (read && workbook.getSheetVisibility(workbook.getSheetIndex(sheet)) != SheetVisibility.VISIBLE) {
                findings().warning(sheet.getSheetName(), "this sheet is hidden but is still read");
            }
        }
    }

    private void requireOnce(String name, Predicate<XSSFSheet> called) {
        sheets().stream().filter(called).skip(1).map(XSSFSheet::getSheetName).forEach(second -> findings()
                .problem(
                        second,
                        "the sheet " + name + " appears twice (case and spaces are ignored); rename or remove one."));
    }

    /** Warns of sheets that are not read because of a slip in their name. */
    void warnOfTypos() {
        typos().warn(findings());
    }

    Optional<XSSFSheet> start() {
        return sheets().stream().filter(BookSheets::isStart).findFirst();
    }

    /** The table of a sheet that a book must have. */
    Optional<InputTable> needed(SheetSchema schema, String why) {
        require(schema, why);
        return table(schema);
    }

    /** Reports a sheet that is missing though the book needs it. */
    void require(SheetSchema schema, String why) {
        if (sheet(schema).isEmpty()) {
            findings().problem(schema.name(), "the sheet is missing; " + why + "." + maybeSheet(schema));
        }
    }

    /** The table of a sheet that a book may lack, which is then noted. */
    Optional<InputTable> optional(SheetSchema schema, String instead) {
        if (sheet(schema).isEmpty()) {
            findings().missing(schema.name(), "the sheet is missing; " + instead + "." + maybeSheet(schema));
        }
        return table(schema);
    }

    /** The table on a sheet; a sheet with content but without a heading that is known is a problem. */
    Optional<InputTable> table(SheetSchema schema) {
        Optional<XSSFSheet> sheet = sheet(schema);
        Optional<InputTable> table = sheet.flatMap(found -> InputTable.on(found, schema, context));
        boolean needed = List.of(GolferColumn.SHEET, ClubColumn.SHEET).contains(schema);
        if (sheet.isPresent() && table.isEmpty() && (needed || sheet.get().getPhysicalNumberOfRows() > 0)) {
            findings()
                    .problem(
                            sheet.get().getSheetName(),
                            "no headings found in the first 10 rows; expected "
                                    + String.join(
                                            ", ",
                                            schema.columns().stream()
                                                    .map(Column::header)
                                                    .limit(HEADINGS_SHOWN)
                                                    .toList())
                                    + " ...");
        }
        return table;
    }

    private static boolean isStart(XSSFSheet sheet) {
        return CloseNames.key(sheet.getSheetName()).equals(CloseNames.key(StartSetting.SHEET));
    }

    private Optional<XSSFSheet> sheet(SheetSchema schema) {
        return sheets().stream()
                .filter(sheet -> schema.isCalled(sheet.getSheetName()))
                .findFirst();
    }

    private List<XSSFSheet> sheets() {
        return StreamSupport.stream(workbook.spliterator(), false)
                .filter(XSSFSheet.class::isInstance)
                .map(XSSFSheet.class::cast)
                .toList();
    }

    private String maybeSheet(SheetSchema schema) {
        return typos().slipOf(schema.name())
                .map(name -> " Maybe the sheet \"" + name + "\"?")
                .orElse("");
    }

    private SheetNameTypos typos() {
        return new SheetNameTypos(sheets().stream().map(XSSFSheet::getSheetName).toList());
    }

    private Findings findings() {
        return context.findings();
    }
}
