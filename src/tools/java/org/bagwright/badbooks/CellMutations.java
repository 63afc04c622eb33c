package org.bagwright.badbooks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Spoils single cells of a book at random; each change is told in words, so that a fault can be looked at. */
final class CellMutations {
    private static final List<String> INPUTS =
            List.of("Start", "Golfers", "Clubs", "Sleeves", "Readings", "Shots", "Weights", "Stock", "Aims");
    private static final double[] NUMBERS = {
        0,
        -0.0,
        -1,
        1,
        2,
        3,
        0.5,
        12,
        14,
        15,
        60,
        100,
        255,
        1000,
        1e9,
        2147483648.0,
        -1e9,
        1e15,
        1e300,
        -1e300,
        1.7e308,
        4.9e-324,
        -4.9e-324,
        1e-300,
        1e-9,
        45383,
        0.0625
    };
    private static final String[] RAW = {"1e999", "-1e999", "abc", "0x10", "", "1e-400", "1,5", "--1", "9".repeat(400)};
    private static final String[] TEXTS = {
        "10,5",
        "1/2",
        "58\u00b0",
        "10 deg",
        "200/250",
        "-",
        "=1+1",
        "+A1",
        "@x",
        "-x",
        "a,b",
        "\"",
        "'",
        "it's",
        "a\nb",
        " ",
        "\u00a0",
        "\u200f\u05d0\u05d1",
        "\u0645\u0636\u0631\u0628",
        "\u9ad8\u5c14\u592b",
        "\ud83c\udfcc",
        "e\u0301",
        "*",
        "?",
        "~",
        "yes",
        "no",
        "even",
        "driver",
        "putter",
        "iron",
        "none",
        "(left out)",
        "Example",
        "1:30",
        "D2",
        "x".repeat(300),
        "[in]",
        "{}",
        "%s",
        "\\",
        "A1:B2",
        "TRUE",
        "0",
        "12 g",
        "Front: 12 g",
        "S: 1",
        "a: b: c",
        "<b>&"
    };
    private static final String[] FORMULAS = {
        "1/0",
        "NA()",
        "SQRT(-1)",
        "1+1",
        "\"a\"&\"b\"",
        "10^308*10",
        "1=1",
        "A1",
        "\"\"",
        "NoSuch(1)",
        "INDIRECT(\"A1\")",
        "TODAY()",
        "RAND()*0+10",
        "SUM(A1:B9)",
        "LOG(0)",
        "CUBEVALUE(\"a\")",
        "Golfers!A2",
        "Clubs!E2",
        "0/1",
        "IF(1,,2)"
    };
    private static final String[] FORMATS = {"yyyy-mm-dd", "h:mm", "0%", "0.00", "@", "[h]:mm", "\"NaN\""};

    private final XSSFWorkbook book;
    private final Random random;
    private final List<String> done = new ArrayList<>();

    CellMutations(XSSFWorkbook book, Random random) {
        this.book = book;
        this.random = random;
    }

    /** Makes some changes, 1 to 8, and tells them. */
    List<String> apply() {
        int count = 1 + random.nextInt(8);
        for (int change = 0; change < count; change++) {
            int kind = random.nextInt(20);
            if (kind < 16) {
                cell(kind);
            } else {
                new TableMutations(book, random, done).apply();
            }
        }
        if (random.nextInt(5) == 0) {
            done.add(SavedMutations.spoil(anyCell(sheet(book, random)), random));
        }
        return done;
    }

    private void cell(int kind) {
        XSSFSheet sheet = sheet(book, random);
        XSSFCell cell = anyCell(sheet);
        switch (kind) {
            case 0, 1, 2 -> number(cell, NUMBERS[random.nextInt(NUMBERS.length)]);
            case 3, 4 -> nudge(cell);
            case 5, 6 -> text(cell, TEXTS[random.nextInt(TEXTS.length)]);
            case 7, 8 -> text(cell, shown(anyCell(sheet(book, random))));
            case 9 -> formula(cell, FORMULAS[random.nextInt(FORMULAS.length)]);
            case 10 -> circle(cell);
            case 11 -> blank(cell);
            case 12 -> swap(cell, anyCell(random.nextBoolean() ? sheet : sheet(book, random)));
            case 13 -> otherType(cell);
            case 14 -> raw(cell, RAW[random.nextInt(RAW.length)]);
            default -> format(cell, FORMATS[random.nextInt(FORMATS.length)]);
        }
    }

    /** An input sheet, or now and then the result sheet on which a person chooses. */
    static XSSFSheet sheet(XSSFWorkbook book, Random random) {
        List<XSSFSheet> sheets = new ArrayList<>();
        for (int index = 0; index < book.getNumberOfSheets(); index++) {
            String name = book.getSheetName(index);
            if (INPUTS.contains(name) || (name.equals("Plan") && random.nextBoolean())) {
                sheets.add(book.getSheetAt(index));
            }
        }
        return sheets.isEmpty() ? book.getSheetAt(0) : sheets.get(random.nextInt(sheets.size()));
    }

    /** Mostly a filled cell, else one inside the table or just beside it. */
    private XSSFCell anyCell(XSSFSheet sheet) {
        List<XSSFCell> filled = new ArrayList<>();
        sheet.forEach(row -> row.forEach(cell -> filled.add((XSSFCell) cell)));
        if (!filled.isEmpty() && random.nextInt(4) > 0) {
            return filled.get(random.nextInt(filled.size()));
        }
        int row = random.nextInt(sheet.getLastRowNum() + 3);
        Row made = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
        return (XSSFCell) made.getCell(random.nextInt(28), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
    }

    private void tell(Cell cell, String what) {
        done.add(cell.getSheet().getSheetName() + "!" + cell.getAddress() + " " + what);
    }

    private void number(XSSFCell cell, double value) {
        tell(cell, "= " + value);
        cell.setCellValue(value);
    }

    private void nudge(XSSFCell cell) {
        double old = number(cell);
        double[] others = {
            -old, old * 10, old / 10, old + 1, old - 1, old + 0.123456789, old * 1.3, old * 0.7, old + 1e-9
        };
        number(cell, others[random.nextInt(others.length)]);
    }

    private static double number(XSSFCell cell) {
        try {
            return cell.getCellType() == CellType.NUMERIC ? cell.getNumericCellValue() : 7;
        } catch (IllegalStateException spoilt) {
            return 7;
        }
    }

    /** The text of a cell; what an earlier change has spoilt is shown as it is saved. */
    static String shown(XSSFCell cell) {
        try {
            return cell.toString();
        } catch (IllegalStateException spoilt) {
            return String.valueOf(cell.getCTCell().getV());
        }
    }

    private void text(XSSFCell cell, String text) {
        tell(cell, "= \"" + text + "\"");
        cell.setCellValue(text);
    }

    private void formula(XSSFCell cell, String text) {
        tell(cell, "= the formula " + text);
        try {
            cell.setCellFormula(text);
        } catch (RuntimeException unknown) {
            cell.setCellErrorValue(FormulaError.NAME);
        }
    }

    private void circle(XSSFCell cell) {
        XSSFCell other = anyCell(cell.getSheet());
        tell(cell, "refers to " + other.getAddress() + " and back");
        cell.setCellFormula(other.getAddress() + "+0");
        other.setCellFormula(cell.getAddress() + "+0");
    }

    private void blank(XSSFCell cell) {
        tell(cell, "is blank");
        cell.setBlank();
    }

    private void swap(XSSFCell one, XSSFCell other) {
        tell(one, "and " + other.getSheet().getSheetName() + "!" + other.getAddress() + " change places");
        var mine = one.getCTCell().copy();
        String here = one.getCTCell().getR();
        String there = other.getCTCell().getR();
        one.getCTCell().set(other.getCTCell().copy());
        other.getCTCell().set(mine);
        one.getCTCell().setR(here);
        other.getCTCell().setR(there);
    }

    private void otherType(XSSFCell cell) {
        if (random.nextInt(3) == 0) {
            tell(cell, "= TRUE");
            cell.setCellValue(true);
        } else if (random.nextInt(3) == 0) {
            tell(cell, "= #REF!");
            cell.setCellErrorValue(FormulaError.REF);
        } else if (cell.getCellType() == CellType.NUMERIC) {
            text(cell, shown(cell).replace('.', ','));
        } else {
            number(cell, random.nextInt(20));
        }
    }

    /** What no spreadsheet program would save as a number. */
    private void raw(XSSFCell cell, String value) {
        tell(cell, "= the raw number " + (value.length() > 20 ? value.length() + " digits" : value));
        cell.setCellValue(1);
        cell.getCTCell().setV(value);
    }

    private void format(XSSFCell cell, String format) {
        tell(cell, "is shown as " + format);
        CellStyle style = book.createCellStyle();
        style.setDataFormat(book.createDataFormat().getFormat(format));
        cell.setCellStyle(style);
    }
}
