package org.bagwright.workbook.read;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.ListText;
import org.bagwright.workbook.cells.BookContext;
import org.bagwright.workbook.cells.CellContents;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.schema.StartSetting;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.NumberText;
import org.bagwright.workbook.text.Quantity;
import org.bagwright.workbook.text.TemperatureUnit;
import org.bagwright.workbook.text.Unit;

/** The labels of the sheet Start found, with the cell to the right of each. */
final class StartSheet {
    private static final int LABEL_COLUMNS = 5;
    private static final int MOST_LABEL_CHARS = 25;
    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*([\\[(])([^\\])]*)[\\])]\\s*:?");

    /** A value: its cell, what it is, and the unit in brackets after its label. */
    record Entry(String cell, CellContent content, Optional<String> unit) {
        Optional<String> words() {
            return content instanceof CellContent.Words words ? Optional.of(words.text()) : Optional.empty();
        }

        /** The number in the unit that the domain keeps the quantity in; {@code usual} where the cell writes none. */
        OptionalDouble number(Quantity quantity, Unit usual) {
            if (content instanceof CellContent.Amount amount && !amount.dated()) {
                return OptionalDouble.of(usual.toDomain(amount.valueMeasureUnits()));
            }
            Optional<NumberText> parsed = words().flatMap(text -> NumberText.parse(text, quantity));
            return parsed.isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(parsed.get().toDomain(usual));
        }
    }

    private final Findings findings;
    private final Map<StartSetting, Entry> entries = new EnumMap<>(StartSetting.class);

    StartSheet(XSSFSheet sheet, CellContents contents, Findings findings) {
        this.findings = findings;
        for (Row row : sheet) {
            for (int column = 0; column < LABEL_COLUMNS; column++) {
                if (take(sheet, row, column, contents)) {
                    break;
                }
            }
        }
    }

    private boolean take(XSSFSheet sheet, Row row, int column, CellContents contents) {
        if (!(contents.of(row.getCell(column)) instanceof CellContent.Words words)) {
            return false;
        }
        Matcher withUnit = WITH_UNIT.matcher(words.text());
        String label = withUnit.matches() ? withUnit.group(1) : words.text().replaceAll("\\s*:$", "");
        Optional<StartSetting> setting = StartSetting.labelled(label);
        CellContent content = contents.of(row.getCell(column + 1));
        if (setting.isEmpty()) {
            tellSlip(BookContext.address(sheet, row.getRowNum(), column), label, content);
            return false;
        }
        String cell = BookContext.address(sheet, row.getRowNum(), column + 1);
        Optional<String> unit = withUnit.matches() ? unit(withUnit) : Optional.empty();
        put(setting.get(), new Entry(cell, content, unit));
        return true;
    }

    /** Warns of a label that is not read though it looks like one and has a value; the sheet may hold any other text. */
    private void tellSlip(String cell, String label, CellContent value) {
        boolean isLabel = !value.isBlank() && !label.startsWith("*") && label.length() <= MOST_LABEL_CHARS;
        Optional<StartSetting> slip = isLabel ? StartSetting.closest(label) : Optional.empty();
        slip.ifPresent(
                setting -> findings.warning(cell, "not read: \"" + label + "\" (Maybe " + setting.label() + "?)."));
    }

    /** Square brackets hold a unit; round ones may hold anything, and only a unit is read. */
    private static Optional<String> unit(Matcher withUnit) {
        String text = withUnit.group(3);
        boolean known = text.contains("%")
                || TemperatureUnit.called(text).isPresent()
                || Arrays.stream(Quantity.values())
                        .anyMatch(quantity -> quantity.unit(text).isPresent());
        return withUnit.group(2).equals("[") || known ? Optional.of(text) : Optional.empty();
    }

    private void put(StartSetting setting, Entry entry) {
        if (entry.content().isBlank()) {
            return;
        }
        Entry first = entries.putIfAbsent(setting, entry);
        if (first != null) {
            findings.problem(
                    entry.cell(), setting.label() + " is given twice, first in " + first.cell() + "; expected once.");
        }
    }

    Optional<Entry> entry(StartSetting setting) {
        return Optional.ofNullable(entries.get(setting));
    }

    void wrongUnit(StartSetting setting, Entry entry, String units) {
        findings.problem(
                entry.cell(),
                "the unit in brackets after " + setting.label() + " must be one of " + units + ", found \""
                        + entry.unit().orElse("") + "\".");
    }

    void wrongWord(StartSetting setting, Entry entry) {
        wrong(setting, entry, "must be " + ListText.oneOf(setting.words()));
    }

    void wrong(StartSetting setting, Entry entry, String must) {
        String found = entry.words().orElse("");
        findings.problem(
                entry.cell(),
                setting.label() + " " + must + ", found " + entry.content().shown() + "."
                        + CloseNames.maybe(found, setting.words()));
    }
}
