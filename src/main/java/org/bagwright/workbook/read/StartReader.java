package org.bagwright.workbook.read;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Matching;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.SpeedUnit;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.cells.CellContents;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.schema.StartSetting;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.Quantity;
import org.bagwright.workbook.text.Unit;

/** Reads the sheet Start; what it leaves blank or gets wrong keeps the default. */
final class StartReader {
    private static final double SAME_LENGTH_M = 0.001;

    private final StartSheet start;
    private final Findings findings;

    private StartReader(StartSheet start, Findings findings) {
        this.start = start;
        this.findings = findings;
    }

    static BookSettings read(XSSFSheet sheet, CellContents contents, Findings findings) {
        StartReader reader = new StartReader(new StartSheet(sheet, contents, findings), findings);
        reader.sayAssumed(sheet.getSheetName());
        return reader.settings();
    }

    private void sayAssumed(String sheetName) {
        List<StartSetting> blank = Arrays.stream(StartSetting.values())
                .filter(setting -> setting != StartSetting.TITLE && setting != StartSetting.SHOT_HEADINGS)
                .filter(setting -> start.entry(setting).isEmpty())
                .toList();
        if (!blank.isEmpty()) {
            findings.assumed(
                    sheetName,
                    "not given, so assumed: "
                            + blank.stream()
                                    .map(setting -> setting.label() + " " + setting.blank())
                                    .collect(Collectors.joining("; "))
                            + ".");
        }
    }

    private BookSettings settings() {
        Units units = units();
        return new BookSettings(
                title(),
                units,
                new AirReader(start, units).air(),
                ballModel(),
                lengthLimitM(),
                matching(),
                planFor(),
                shotHeadings());
    }

    private Optional<String> title() {
        return start.entry(StartSetting.TITLE).map(entry -> {
            if (entry.content() instanceof CellContent.Words words) {
                return words.text();
            }
            if (entry.content() instanceof CellContent.Broken) {
                start.wrong(StartSetting.TITLE, entry, "must be text");
            }
            return entry.content().shown();
        });
    }

    private String shotHeadings() {
        return start.entry(StartSetting.SHOT_HEADINGS)
                .flatMap(StartSheet.Entry::words)
                .orElse("");
    }

    private Units units() {
        Units usual = Units.DEFAULT;
        return new Units(
                word(
                        StartSetting.DISTANCE,
                        new LengthUnit[] {LengthUnit.YARD, LengthUnit.METRE},
                        (unit, text) -> isUnit(Quantity.DISTANCE, unit.label(), text),
                        usual.distance()),
                word(
                        StartSetting.SPEED,
                        SpeedUnit.values(),
                        (unit, text) -> isUnit(Quantity.SPEED, unit.label(), text),
                        usual.speed()),
                word(
                        StartSetting.LENGTH,
                        new LengthUnit[] {LengthUnit.INCH, LengthUnit.MILLIMETRE},
                        (unit, text) -> isUnit(Quantity.LENGTH, unit.label(), text),
                        usual.length()));
    }

    private static boolean isUnit(Quantity quantity, String label, String text) {
        return quantity.unit(text).map(Unit::label).filter(label::equals).isPresent();
    }

    private BallModelKind ballModel() {
        return word(
                StartSetting.BALL_MODEL,
                BallModelKind.values(),
                (kind, text) -> letters(kind.label()).equals(letters(text)),
                BookSettings.DEFAULT.ballModel());
    }

    private static String letters(String text) {
        return CloseNames.key(text).replaceAll("(\\band\\b)|&|[^a-z]", "");
    }

    private Matching matching() {
        Matching usual = Matching.DEFAULT;
        return new Matching(
                word(
                        StartSetting.MATCH_BY,
                        Matching.By.values(),
                        (by, text) -> by.label().equals(CloseNames.key(text)),
                        usual.by()),
                word(
                        StartSetting.MATCH_OVER,
                        Matching.Over.values(),
                        (over, text) -> over.label().equals(CloseNames.key(text)),
                        usual.over()));
    }

    private BookSettings.PlanFor planFor() {
        return word(
                StartSetting.PLAN_FOR,
                BookSettings.PlanFor.values(),
                (planFor, text) -> planFor.label().equals(CloseNames.key(text)),
                BookSettings.DEFAULT.planFor());
    }

    /** One of few values, each written as a word. */
    private <T> T word(StartSetting setting, T[] values, BiPredicate<T, String> isWritten, T usual) {
        Optional<StartSheet.Entry> entry = start.entry(setting);
        if (entry.isEmpty()) {
            return usual;
        }
        Optional<T> meant = entry.get().words().flatMap(text -> Arrays.stream(values)
                .filter(value -> isWritten.test(value, text))
                .findFirst());
        if (meant.isEmpty()) {
            start.wrongWord(setting, entry.get());
        }
        return meant.orElse(usual);
    }

    private double lengthLimitM() {
        Optional<StartSheet.Entry> entry = start.entry(StartSetting.LENGTH_LIMIT);
        if (entry.isEmpty()) {
            return BookSettings.DEFAULT.lengthLimitM();
        }
        Unit unit = entry.get().unit().flatMap(Quantity.LENGTH::unit).orElse(Quantity.LENGTH.usual(Units.DEFAULT));
        double found = entry.get().number(Quantity.LENGTH, unit).orElse(Double.NaN);
        for (double inches : new double[] {48, 46}) {
            double limitM = LengthUnit.INCH.toM(inches);
            if (Math.abs(found - limitM) < SAME_LENGTH_M) {
                return limitM;
            }
        }
        start.wrong(StartSetting.LENGTH_LIMIT, entry.get(), "must be 48 or 46 (inches)");
        return BookSettings.DEFAULT.lengthLimitM();
    }
}
