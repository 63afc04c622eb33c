package org.bagwright.badbooks;

import java.util.List;
import java.util.Random;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import org.w3c.dom.Element;

/**
 * Spoils a cell as it is saved: kinds of cells, errors and formulas that other programs write and the library does not know,
 * and some that no program writes. The library cannot read such a cell back, so this comes after all other changes.
 */
final class SavedMutations {
    private static final String[] ERRORS = {
        "#SPILL!", "#CALC!", "#GETTING_DATA", "#BLOCKED!", "Err:522", "#n/a", "x", ""
    };
    private static final String[] TEXT_NUMBERS = {"99999", "-1", "1.5", "x", "", "2147483648"};
    private static final String[] TRUTHS = {"2", "true", "FALSE", "-1", "x", ""};
    private static final String[] NUMBERS = {
        " 12 ", "1e2", "+3", "1_000", "12f", "0x1p3", "\u0661\u0662", ".5", "5.", "INF"
    };
    private static final String[] FORMULAS = {
        "(((", "=1+1", "1+", "NoSheet!A1", "'[9]x'!A1", "A1:", "{1,2}", "#REF!+1", "_xlfn.NOSUCH(1)"
    };

    private final XSSFCell cell;
    private final Random random;

    private SavedMutations(XSSFCell cell, Random random) {
        this.cell = cell;
        this.random = random;
    }

    /** Changes a cell and tells the change. */
    static String spoil(XSSFCell cell, Random random) {
        return cell.getSheet().getSheetName() + "!" + cell.getAddress() + " "
                + new SavedMutations(cell, random).change();
    }

    private String change() {
        return switch (random.nextInt(8)) {
            case 0 -> saved("e", anyOf(ERRORS));
            case 1 -> saved("s", anyOf(TEXT_NUMBERS));
            case 2 -> saved("b", anyOf(TRUTHS));
            case 3 -> saved("n", anyOf(NUMBERS));
            case 4 -> saved("d", "2026-05-01T00:00:00");
            case 5 -> saved(anyOf(new String[] {"zz", "", "S"}), "1");
            case 6 -> formula(anyOf(FORMULAS));
            default -> orphan();
        };
    }

    private String anyOf(String[] texts) {
        return texts[random.nextInt(texts.length)];
    }

    private String saved(String kind, String value) {
        CTCell xml = plain();
        xml.setV(value);
        ((Element) xml.getDomNode()).setAttribute("t", kind);
        return "is saved with the kind " + kind + " and the value " + value;
    }

    private String formula(String text) {
        CTCell xml = plain();
        xml.addNewF().setStringValue(text);
        return withValue(xml, "has the formula " + text);
    }

    private String orphan() {
        CTCell xml = plain();
        xml.addNewF().setSi(77);
        ((Element) xml.getF().getDomNode()).setAttribute("t", "shared");
        return withValue(xml, "has a shared formula whose first cell is missing");
    }

    private String withValue(CTCell xml, String told) {
        String value = anyOf(new String[] {"", "10", "text"});
        if (!value.isEmpty()) {
            xml.setV(value);
            ((Element) xml.getDomNode()).setAttribute("t", value.equals("10") ? "n" : "str");
        }
        return told + List.of(value);
    }

    private CTCell plain() {
        CTCell xml = cell.getCTCell();
        if (xml.isSetF()) {
            xml.unsetF();
        }
        if (xml.isSetV()) {
            xml.unsetV();
        }
        if (xml.isSetIs()) {
            xml.unsetIs();
        }
        if (xml.isSetT()) {
            xml.unsetT();
        }
        return xml;
    }
}
