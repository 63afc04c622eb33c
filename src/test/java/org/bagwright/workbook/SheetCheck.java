package org.bagwright.workbook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellRangeAddress;
import org.w3c.dom.Element;

/** Finds in workbook and sheets what a spreadsheet program refuses: names, numbers of things, lengths, places. */
final class SheetCheck {
    private static final int LONGEST_SHEET_NAME = 31;
    private static final int LONGEST_LIST = 255;
    private static final int LONGEST_FORMULA = 8192;
    private static final int LONGEST_TEXT = 32767;
    private static final int DEEPEST = 64;
    private static final Pattern NAME = Pattern.compile("[\\p{L}_\\\\][\\p{L}\\p{N}_.\\\\?]{0,254}");
    private static final Pattern CELL_NAME = Pattern.compile("[A-Za-z]{1,3}[0-9]+|[RrCc]|[Rr][0-9]*[Cc][0-9]*");

    private final BookPackage file;
    private final List<String> problems = new ArrayList<>();
    private final int formats;
    private final int texts;
    private final int marked;

    private SheetCheck(BookPackage file) {
        this.file = file;
        Element styles = file.xml("xl/styles.xml").getDocumentElement();
        formats = children(styles, "cellXfs", "xf");
        marked = children(styles, "dxfs", "dxf");
        texts = file.parts().containsKey("xl/sharedStrings.xml")
                ? BookPackage.all(file.xml("xl/sharedStrings.xml").getDocumentElement(), "si")
                        .size()
                : 0;
    }

    static List<String> problems(BookPackage file) {
        SheetCheck check = new SheetCheck(file);
        check.workbook();
        file.contents().stream()
                .filter(part -> part.matches("xl/worksheets/[^/]*\\.xml"))
                .forEach(check::sheet);
        file.contents().stream()
                .filter(part -> part.matches("xl/drawings/[^/]*\\.xml"))
                .forEach(check::drawing);
        check.texts();
        return check.problems;
    }

    private static int children(Element root, String list, String item) {
        return BookPackage.all(root, list).stream()
                .findFirst()
                .map(found -> BookPackage.all(found, item).size())
                .orElse(0);
    }

    private void workbook() {
        Element book = file.xml("xl/workbook.xml").getDocumentElement();
        List<Element> sheets = BookPackage.all(book, "sheet");
        Set<String> names = new HashSet<>();
        Set<String> ids = new HashSet<>();
        for (Element sheet : sheets) {
            String name = sheet.getAttribute("name");
            require(names.add(name.toLowerCase(Locale.ROOT)), name, "is the name of two sheets");
            require(ids.add(sheet.getAttribute("sheetId")), name, "has the id of another sheet");
            require(name.length() <= LONGEST_SHEET_NAME && name.matches("[^\\[\\]:*?/\\\\]+"), name, "is no name");
        }
        for (Element view : BookPackage.all(book, "workbookView")) {
            require(number(view, "activeTab") < sheets.size(), "activeTab", "is no sheet");
            require(number(view, "firstSheet") < sheets.size(), "firstSheet", "is no sheet");
        }
        definedNames(book, sheets.size());
    }

    private void definedNames(Element book, int sheets) {
        Set<String> seen = new HashSet<>();
        for (Element name : BookPackage.all(book, "definedName")) {
            String text = name.getAttribute("name");
            String scope = name.getAttribute("localSheetId");
            require(seen.add(scope + "!" + text.toLowerCase(Locale.ROOT)), text, "appears twice");
            require(number(name, "localSheetId") < sheets, text, "belongs to no sheet");
            boolean usual =
                    NAME.matcher(text).matches() && !CELL_NAME.matcher(text).matches();
            require(usual, text, "is no defined name");
            require(!name.getTextContent().contains("#REF!"), text, "leads nowhere");
        }
    }

    private void sheet(String part) {
        Element sheet = file.xml(part).getDocumentElement();
        cells(part, sheet);
        for (Element rule : BookPackage.all(sheet, "cfRule")) {
            if (rule.hasAttribute("dxfId")) {
                require(number(rule, "dxfId") < marked, part, "a rule has no format " + rule.getAttribute("dxfId"));
            }
        }
        unique(
                part,
                BookPackage.all(sheet, "cfRule").stream()
                        .filter(rule -> rule.hasAttribute("priority"))
                        .map(rule -> "priority " + rule.getAttribute("priority"))
                        .toList());
        for (Element list : BookPackage.all(sheet, "formula1")) {
            String text = list.getTextContent();
            require(!text.startsWith("\"") || text.length() <= LONGEST_LIST + 2, part, "too long a list: " + text);
        }
        List<CellRangeAddress> merged = BookPackage.all(sheet, "mergeCell").stream()
                .map(cell -> CellRangeAddress.valueOf(cell.getAttribute("ref")))
                .toList();
        for (int one = 0; one < merged.size(); one++) {
            for (int other = 0; other < one; other++) {
                require(!merged.get(one).intersects(merged.get(other)), part, "merges overlap: " + merged.get(one));
            }
        }
    }

    private void cells(String part, Element sheet) {
        int row = 0;
        for (Element line : BookPackage.all(sheet, "row")) {
            int next = number(line, "r");
            require(next > row, part, "row " + next + " is out of order");
            row = next;
        }
        unique(
                part,
                BookPackage.all(sheet, "c").stream()
                        .filter(cell -> cell.hasAttribute("r"))
                        .map(cell -> cell.getAttribute("r"))
                        .toList());
        for (Element cell : BookPackage.all(sheet, "c")) {
            String where = part + "!" + cell.getAttribute("r");
            require(number(cell, "s") < formats, where, "has no format");
            if (cell.getAttribute("t").equals("s")) {
                int text = Integer.parseInt(
                        BookPackage.all(cell, "v").get(0).getTextContent().trim());
                require(text < texts, where, "has no text");
            }
        }
        for (Element formula : BookPackage.all(sheet, "f")) {
            String text = formula.getTextContent();
            require(text.length() <= LONGEST_FORMULA, part, "too long a formula: " + text);
            require(depth(text) <= DEEPEST, part, "too deep a formula: " + text);
            require(!text.contains("#REF!"), part, "a formula leads nowhere: " + text);
        }
    }

    private static int depth(String formula) {
        int depth = 0;
        int most = 0;
        for (int index = 0; index < formula.length(); index++) {
            char letter = formula.charAt(index);
            depth += letter == '(' ? 1 : letter == ')' ? -1 : 0;
            most = Math.max(most, depth);
        }
        return most;
    }

    private void drawing(String part) {
        unique(
                part,
                BookPackage.all(file.xml(part).getDocumentElement(), "cNvPr").stream()
                        .map(shape -> "shape " + shape.getAttribute("id"))
                        .toList());
    }

    private void texts() {
        if (file.parts().containsKey("xl/sharedStrings.xml")) {
            for (Element text : BookPackage.all(file.xml("xl/sharedStrings.xml").getDocumentElement(), "si")) {
                require(text.getTextContent().length() <= LONGEST_TEXT, "sharedStrings", "too long a text");
            }
        }
    }

    private void unique(String part, List<String> all) {
        Set<String> seen = new HashSet<>();
        all.forEach(one -> require(seen.add(one), part, "has " + one + " twice"));
    }

    private static int number(Element element, String attribute) {
        return element.hasAttribute(attribute) ? Integer.parseInt(element.getAttribute(attribute)) : 0;
    }

    private void require(boolean holds, String where, String what) {
        if (!holds) {
            problems.add(where + " " + what);
        }
    }
}
