package org.bagwright.workbook.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.read.BookReader;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.InputSheet;
import org.bagwright.workbook.schema.SheetSchema;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("analytic")
class BlankBookTest {
    @TempDir
    static Path folder;

    private static Path fresh;

    @BeforeAll
    static void writeOnce() throws IOException {
        fresh = folder.resolve("bag.xlsx");
        BlankBook.write(fresh);
    }

    @Test
    void blankBook_hasOnlyTheProblemThatItIsEmpty() {
        BookReader.Result result = BookReader.read(fresh);
        assertEquals(
                List.of(
                        "PROBLEM Golfers!A5: No golfer: every row under the headings is empty. Enter a name" + " here.",
                        "PROBLEM Clubs!C5: No club: every row under the headings is empty. Enter a club" + " here."),
                result.messages().stream()
                        .map(message -> message.severity() + " " + message.cell() + ": " + message.text())
                        .toList());
    }

    @Test
    void filledInTemplate_isReadWithoutProblemsAndWithItsDefaults() throws IOException {
        Path filled = folder.resolve("filled.xlsx");
        try (InputStream in = Files.newInputStream(fresh);
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            fill(workbook, "Golfers", 5, Map.of("Golfer", "Ann", "Driver speed", 95, "Iron speed", 78));
            fill(workbook, "Sleeves", 5, Map.of("Sleeve", "Two degree", "Setting", "1", "Clock", "12:00", "Bend", 1.7));
            fill(workbook, "Sleeves", 6, Map.of("Sleeve", "Two degree", "Setting", "2", "Clock", 3, "Bend", 1.7));
            fill(workbook, "Clubs", 5, club(1, "Driver", "driver", 10.5, 58, 45.5));
            fill(workbook, "Clubs", 6, club(2, "3 wood", "wood", 15, 57.5, 43));
            fill(workbook, "Clubs", 7, club(3, "4 hybrid", "hybrid", 22, 59.5, 39.5));
            fill(workbook, "Shots", 5, Map.of("Golfer", "Ann", "Club", "Driver", "Ball speed", 140, "Carry", 225));
            fill(workbook, "Clubs", 6, Map.of("Kit", "Front", "Weighting", "heavy", "Swingweight", "D2"));
            fill(workbook, "Weights", 5, port("Light", 4));
            fill(workbook, "Weights", 6, port("Heavy", 12));
            fill(workbook, "Stock", 5, Map.of("Item", "Front: 12 g", "Count", 1));
            try (OutputStream out = Files.newOutputStream(filled)) {
                workbook.write(out);
            }
        }
        BookReader.Result result = BookReader.read(filled);
        assertTrue(
                result.messages().stream().allMatch(message -> message.text().startsWith("Face is blank")),
                "nothing wrong, and only the face is assumed");
        Book book = result.book().orElseThrow();
        assertEquals(
                List.of("Driver", "3 wood", "4 hybrid"),
                book.clubs().stream().map(c -> c.name()).toList());
        assertEquals(Optional.of("Heavy"), book.clubs().get(1).today().weighting());
        assertEquals(2, book.kits().get(0).weightings().size());
        assertEquals(1, book.stock().get(0).count());
        assertEquals(BookSettings.DEFAULT, book.settings());
        Aims.defaults().byMeasure().forEach((measure, aim) -> {
            assertEquals(aim.importancePoints(), book.aims().of(measure).importancePoints(), 1e-12);
            assertEquals(aim.toleranceMeasureUnits(), book.aims().of(measure).toleranceMeasureUnits(), 1e-12);
        });
    }

    private static Map<String, Object> port(String weighting, double massG) {
        return Map.of("Kit", "Front", "Weighting", weighting, "Port", "A", "Mass", massG, "X", 20, "Y", 0, "Z", -5);
    }

    private static Map<String, Object> club(
            int slot, String name, String kind, double loft, double lie, double length) {
        Map<String, Object> club = new TreeMap<>(Map.of("Slot", slot, "Club", name, "Kind", kind, "Length", length));
        club.putAll(Map.of("Golfer", "Ann", "Loft", loft, "Lie", lie, "Sleeve", "Two degree", "Setting", "1"));
        return club;
    }

    @Test
    void exampleRows_wouldBeReadIfTheirNamesWereNoExamples() throws IOException {
        Path named = folder.resolve("named.xlsx");
        try (InputStream in = Files.newInputStream(fresh);
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            workbook.sheetIterator()
                    .forEachRemaining(sheet -> sheet.forEach(row -> row.forEach(BlankBookTest::rename)));
            int row = 5;
            for (String mark : List.of("1", "3")) {
                fill(workbook, "Sleeves", row++, Map.of("Sleeve", "My sleeve", "Setting", mark, "Bend", 0));
            }
            Map<String, Object> next = new TreeMap<>(club(2, "3 wood", "wood", 15, 57, 43));
            next.putAll(Map.of("Golfer", "My golfer", "Sleeve", "My sleeve"));
            fill(workbook, "Clubs", 5, next);
            try (OutputStream out = Files.newOutputStream(named)) {
                workbook.write(out);
            }
        }
        assertEquals(
                List.of("Clubs!G6"),
                BookReader.read(named).messages().stream().map(Message::cell).toList(),
                "only the blank face is assumed");
    }

    private static void rename(Cell cell) {
        if (cell.getCellType() == org.apache.poi.ss.usermodel.CellType.STRING
                && cell.getStringCellValue().startsWith("Example ")) {
            cell.setCellValue(cell.getStringCellValue().replace("Example ", "My "));
        }
    }

    @Test
    void sheets_areInTheOrderOfTheHandbook() throws IOException {
        try (XSSFWorkbook workbook = open()) {
            List<String> visible = IntStream.range(0, workbook.getNumberOfSheets())
                    .filter(index -> workbook.getSheetVisibility(index) == SheetVisibility.VISIBLE)
                    .mapToObj(workbook::getSheetName)
                    .toList();
            assertEquals(
                    List.of("Start", "Golfers", "Clubs", "Sleeves", "Readings", "Shots", "Weights", "Stock", "Aims"),
                    visible);
        }
    }

    @Test
    void everyHeading_hasItsNote() throws IOException {
        try (XSSFWorkbook workbook = open()) {
            for (InputSheet sheet : InputSheet.values()) {
                SheetSchema schema = sheet.schema();
                TemplateLayout layout = TemplateLayout.of(schema);
                XSSFRow headings = workbook.getSheet(schema.name()).getRow(TemplateLayout.HEADING_ROW);
                for (int index = 0; index < layout.columns().size(); index++) {
                    assertEquals(
                            layout.columns().get(index).note(),
                            headings.getCell(index).getCellComment().getString().getString());
                }
            }
        }
    }

    @Test
    void headings_areTheColumnsThatTheReaderKnows() throws IOException {
        try (XSSFWorkbook workbook = open()) {
            for (InputSheet sheet : InputSheet.values()) {
                SheetSchema schema = sheet.schema();
                List<String> headings = StreamSupport.stream(
                                workbook.getSheet(schema.name())
                                        .getRow(TemplateLayout.HEADING_ROW)
                                        .spliterator(),
                                false)
                        .map(Cell::getStringCellValue)
                        .toList();
                assertEquals(schema.columns().stream().map(Column::header).toList(), headings);
            }
        }
    }

    @Test
    void validations_coverDropDownsAndLimits() throws IOException {
        try (XSSFWorkbook workbook = open()) {
            assertEquals("GolferNames", formula(workbook.getSheet("Clubs"), "Golfer"));
            assertEquals("SleeveNames", formula(workbook.getSheet("Clubs"), "Sleeve"));
            assertEquals("\"driver,wood,hybrid,iron,wedge,putter\"", formula(workbook.getSheet("Clubs"), "Kind"));
            assertEquals("KitNames", formula(workbook.getSheet("Clubs"), "Kit"));
            assertEquals("\"yes,no\"", formula(workbook.getSheet("Clubs"), "In bag"));
            assertEquals("0.15/LengthUnit", formula(workbook.getSheet("Clubs"), "Shaft balance"));
            assertEquals("-130", formula(workbook.getSheet("Weights"), "Y"));
            assertEquals("0", formula(workbook.getSheet("Stock"), "Count"));
            assertEquals("\"R,L\"", formula(workbook.getSheet("Golfers"), "Hand"));
            assertEquals("40", formula(workbook.getSheet("Clubs"), "Lie"));
            assertEquals("0.4/LengthUnit", formula(workbook.getSheet("Clubs"), "Length"));
            assertEquals("8/SpeedUnit", formula(workbook.getSheet("Golfers"), "Driver speed"));
            assertEquals("1/DistanceUnit", formula(workbook.getSheet("Shots"), "Carry"));
            assertEquals("100", formula(workbook.getSheet("Clubs"), "Head mass"));
            assertTrue(workbook.getSheet("Start").getDataValidations().size() >= 6);
        }
    }

    @Test
    void errorBoxes_fitTheLengthsThatSpreadsheetProgramsAllow() throws IOException {
        try (XSSFWorkbook workbook = open()) {
            workbook.sheetIterator().forEachRemaining(sheet -> {
                for (DataValidation validation : sheet.getDataValidations()) {
                    if (validation.getErrorBoxText() != null) {
                        assertTrue(validation.getErrorBoxText().length() <= 225, validation::getErrorBoxText);
                    }
                }
            });
        }
    }

    @Test
    void dropDownNames_areEachGolferOnceWithoutTheExample() throws IOException {
        try (XSSFWorkbook workbook = open()) {
            fill(workbook, "Sleeves", 5, Map.of("Sleeve", "Two degree"));
            fill(workbook, "Sleeves", 6, Map.of("Sleeve", "Other"));
            fill(workbook, "Sleeves", 7, Map.of("Sleeve", "two degree"));
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            XSSFSheet lists = workbook.getSheet(TemplateLists.SHEET);
            List<String> names = IntStream.range(1, 5)
                    .mapToObj(row -> lists.getRow(row).getCell(5).getStringCellValue())
                    .toList();
            assertEquals(List.of("Two degree", "Other", "", ""), names);
        }
    }

    @Test
    void schema_neverHasOneHeadingTwiceOnASheet() {
        for (InputSheet sheet : InputSheet.values()) {
            SheetSchema schema = sheet.schema();
            List<String> keys = schema.columns().stream()
                    .map(column -> CloseNames.key(column.header()))
                    .toList();
            assertEquals(keys.size(), keys.stream().distinct().count(), schema.name());
        }
    }

    private static XSSFWorkbook open() throws IOException {
        try (InputStream in = Files.newInputStream(fresh)) {
            return new XSSFWorkbook(in);
        }
    }

    private static void fill(XSSFWorkbook workbook, String sheet, int row, Map<String, Object> values) {
        Row headings = workbook.getSheet(sheet).getRow(TemplateLayout.HEADING_ROW);
        for (Cell heading : headings) {
            Object value = values.get(heading.getStringCellValue());
            Cell cell = workbook.getSheet(sheet).getRow(row).getCell(heading.getColumnIndex());
            if (value instanceof Number number) {
                cell.setCellValue(number.doubleValue());
            } else if (value != null) {
                cell.setCellValue(value.toString());
            }
        }
    }

    private static String formula(XSSFSheet sheet, String header) {
        int column = StreamSupport.stream(
                        sheet.getRow(TemplateLayout.HEADING_ROW).spliterator(), false)
                .filter(cell -> cell.getStringCellValue().equals(header))
                .findFirst()
                .orElseThrow()
                .getColumnIndex();
        return sheet.getDataValidations().stream()
                .filter(validation ->
                        validation.getRegions().getCellRangeAddresses()[0].getFirstColumn() == column)
                .findFirst()
                .orElseThrow()
                .getValidationConstraint()
                .getFormula1();
    }
}
