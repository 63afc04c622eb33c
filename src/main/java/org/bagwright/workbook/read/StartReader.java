package org.bagwright.workbook.read;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.book.BallModelKind;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Matching;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.ListText;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.Limit;
import org.bagwright.domain.units.SpeedUnit;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.cells.CellContents;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.schema.StartSetting;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.NumberText;
import org.bagwright.workbook.text.Quantity;
import org.bagwright.workbook.text.Temperatures;
import org.bagwright.workbook.text.Unit;

/** Reads the sheet Start; what it leaves blank or gets wrong keeps the default. */
final class StartReader {
    private static final double M_PER_IN = 0.0254;
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
                .filter(setting -> setting != StartSetting.TITLE)
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
        return new BookSettings(title(), units, air(units), ballModel(), lengthLimitM(), matching());
    }

    private Optional<String> title() {
        return start.entry(StartSetting.TITLE).map(entry -> {
            if (entry.content() instanceof CellContent.Words words) {
                return words.text();
            }
            if (entry.content() instanceof CellContent.Broken) {
                wrong(StartSetting.TITLE, entry, "must be text");
            }
            return entry.content().shown();
        });
    }

    private Units units() {
        return new Units(
                unit(StartSetting.DISTANCE, Quantity.DISTANCE, distances(), Units.DEFAULT.distance()),
                unit(StartSetting.SPEED, Quantity.SPEED, speeds(), Units.DEFAULT.speed()),
                unit(StartSetting.LENGTH, Quantity.LENGTH, lengths(), Units.DEFAULT.length()));
    }

    private static Map<String, LengthUnit> distances() {
        return labelled(LengthUnit.YARD, LengthUnit.METRE);
    }

    private static Map<String, SpeedUnit> speeds() {
        return Arrays.stream(SpeedUnit.values()).collect(Collectors.toMap(SpeedUnit::label, unit -> unit));
    }

    private static Map<String, LengthUnit> lengths() {
        return labelled(LengthUnit.INCH, LengthUnit.MILLIMETRE);
    }

    private static Map<String, LengthUnit> labelled(LengthUnit... units) {
        return Arrays.stream(units).collect(Collectors.toMap(LengthUnit::label, unit -> unit));
    }

    private <T> T unit(StartSetting setting, Quantity quantity, Map<String, T> byLabel, T usual) {
        Optional<StartSheet.Entry> entry = start.entry(setting);
        if (entry.isEmpty()) {
            return usual;
        }
        Optional<T> unit = words(entry.get()).flatMap(quantity::unit).map(found -> byLabel.get(found.label()));
        if (unit.isEmpty()) {
            wrong(setting, entry.get(), "must be " + ListText.oneOf(setting.words()));
        }
        return unit.orElse(usual);
    }

    private static Optional<String> words(StartSheet.Entry entry) {
        return entry.content() instanceof CellContent.Words words ? Optional.of(words.text()) : Optional.empty();
    }

    private AirConditions air(Units units) {
        AirConditions usual = AirConditions.DEFAULT;
        return new AirConditions(
                temperatureC().orElse(usual.temperatureC()),
                measured(StartSetting.ALTITUDE, Quantity.ALTITUDE, units, Limit.ALTITUDE_M)
                        .orElse(usual.altitudeM()),
                humidityRatio().orElse(usual.humidityRatio()),
                measured(StartSetting.HEAD_WIND, Quantity.SPEED, units, Limit.WIND_MPS)
                        .orElse(usual.headWindMps()),
                measured(StartSetting.CROSS_WIND, Quantity.SPEED, units, Limit.WIND_MPS)
                        .orElse(usual.crossWindMps()));
    }

    private OptionalDouble temperatureC() {
        boolean bookInF = fahrenheit(StartSetting.TEMPERATURE);
        Optional<StartSheet.Entry> entry = start.entry(StartSetting.AIR_TEMPERATURE);
        return entry.isEmpty() ? OptionalDouble.empty() : temperatureC(entry.get(), bookInF);
    }

    private OptionalDouble temperatureC(StartSheet.Entry entry, boolean bookInF) {
        Optional<Boolean> labelled = entry.unit().flatMap(Temperatures::isFahrenheit);
        if (entry.unit().isPresent() && labelled.isEmpty()) {
            wrongUnit(StartSetting.AIR_TEMPERATURE, entry, "C, F");
            return OptionalDouble.empty();
        }
        boolean inF = labelled.orElse(bookInF);
        OptionalDouble value = Temperatures.celsius(entry.content(), inF);
        Limit limit = Limit.AIR_TEMPERATURE_C;
        if (value.isPresent() && limit.holds(value.getAsDouble())) {
            return value;
        }
        wrong(StartSetting.AIR_TEMPERATURE, entry, "must be " + Temperatures.inWords(limit, inF));
        return OptionalDouble.empty();
    }

    private boolean fahrenheit(StartSetting setting) {
        Optional<StartSheet.Entry> entry = start.entry(setting);
        Optional<Boolean> inF = entry.flatMap(StartReader::words).flatMap(Temperatures::isFahrenheit);
        if (entry.isPresent() && inF.isEmpty()) {
            wrong(setting, entry.get(), "must be " + ListText.oneOf(setting.words()));
        }
        return inF.orElse(false);
    }

    private OptionalDouble measured(StartSetting setting, Quantity quantity, Units units, Limit limit) {
        Optional<StartSheet.Entry> entry = start.entry(setting);
        if (entry.isEmpty()) {
            return OptionalDouble.empty();
        }
        Optional<Unit> labelled = entry.get().unit().flatMap(quantity::unit);
        if (entry.get().unit().isPresent() && labelled.isEmpty()) {
            wrongUnit(setting, entry.get(), quantity.labels());
            return OptionalDouble.empty();
        }
        Unit unit = labelled.orElse(quantity.usual(units));
        OptionalDouble value = value(entry.get().content(), quantity, unit);
        if (value.isPresent() && limit.holds(value.getAsDouble())) {
            return value;
        }
        wrong(setting, entry.get(), "must be " + unit.inWords(limit));
        return OptionalDouble.empty();
    }

    private static OptionalDouble value(CellContent content, Quantity quantity, Unit unit) {
        if (content instanceof CellContent.Amount amount && !amount.dated()) {
            return OptionalDouble.of(unit.toDomain(amount.valueMeasureUnits()));
        }
        Optional<NumberText.Parsed> parsed = content instanceof CellContent.Words words
                ? NumberText.parse(words.text(), quantity)
                : Optional.empty();
        return parsed.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        parsed.get().unit().orElse(unit).toDomain(parsed.get().valueMeasureUnits()));
    }

    private OptionalDouble humidityRatio() {
        Optional<StartSheet.Entry> entry = start.entry(StartSetting.HUMIDITY);
        if (entry.isEmpty()) {
            return OptionalDouble.empty();
        }
        boolean percent = entry.get().unit().isPresent()
                || words(entry.get()).filter(text -> text.contains("%")).isPresent();
        OptionalDouble value = value(withoutPercent(entry.get().content()), Quantity.PLAIN, Unit.of("", 1));
        double number = value.orElse(Double.NaN);
        double ratio = percent || number > 1 ? number / 100 : number;
        if (Limit.HUMIDITY_RATIO.holds(ratio)) {
            return OptionalDouble.of(ratio);
        }
        wrong(StartSetting.HUMIDITY, entry.get(), "must be 0 to 100 percent");
        return OptionalDouble.empty();
    }

    private static CellContent withoutPercent(CellContent content) {
        return content instanceof CellContent.Words words
                ? CellContent.words(words.text().replaceAll("\\s*(%|percent)$", ""))
                : content;
    }

    private BallModelKind ballModel() {
        Optional<StartSheet.Entry> entry = start.entry(StartSetting.BALL_MODEL);
        if (entry.isEmpty()) {
            return BookSettings.DEFAULT.ballModel();
        }
        Optional<BallModelKind> model = words(entry.get()).flatMap(text -> Arrays.stream(BallModelKind.values())
                .filter(kind -> letters(kind.label()).equals(letters(text)))
                .findFirst());
        if (model.isEmpty()) {
            wrong(StartSetting.BALL_MODEL, entry.get(), "must be " + ListText.oneOf(StartSetting.BALL_MODEL.words()));
        }
        return model.orElse(BookSettings.DEFAULT.ballModel());
    }

    private static String letters(String text) {
        return CloseNames.key(text).replaceAll("(\\band\\b)|&|[^a-z]", "");
    }

    private Matching matching() {
        return new Matching(
                word(StartSetting.MATCH_BY, Matching.By.values(), Matching.By::label, Matching.DEFAULT.by()),
                word(StartSetting.MATCH_OVER, Matching.Over.values(), Matching.Over::label, Matching.DEFAULT.over()));
    }

    private <T> T word(StartSetting setting, T[] values, Function<T, String> label, T usual) {
        Optional<StartSheet.Entry> entry = start.entry(setting);
        if (entry.isEmpty()) {
            return usual;
        }
        Optional<T> meant = words(entry.get()).flatMap(text -> Arrays.stream(values)
                .filter(value -> label.apply(value).equals(CloseNames.key(text)))
                .findFirst());
        if (meant.isEmpty()) {
            wrong(setting, entry.get(), "must be " + ListText.oneOf(setting.words()));
        }
        return meant.orElse(usual);
    }

    private double lengthLimitM() {
        Optional<StartSheet.Entry> entry = start.entry(StartSetting.LENGTH_LIMIT);
        if (entry.isEmpty()) {
            return BookSettings.DEFAULT.lengthLimitM();
        }
        Unit unit = entry.get().unit().flatMap(Quantity.LENGTH::unit).orElse(Quantity.LENGTH.usual(Units.DEFAULT));
        double found = value(entry.get().content(), Quantity.LENGTH, unit).orElse(Double.NaN);
        for (double inches : new double[] {48, 46}) {
            if (Math.abs(found - inches * M_PER_IN) < SAME_LENGTH_M) {
                return inches * M_PER_IN;
            }
        }
        wrong(StartSetting.LENGTH_LIMIT, entry.get(), "must be 48 or 46 (inches)");
        return BookSettings.DEFAULT.lengthLimitM();
    }

    private void wrongUnit(StartSetting setting, StartSheet.Entry entry, String units) {
        findings.problem(
                entry.cell(),
                "the unit in brackets after " + setting.label() + " must be one of " + units + ", found \""
                        + entry.unit().orElse("") + "\".");
    }

    private void wrong(StartSetting setting, StartSheet.Entry entry, String must) {
        String found = entry.content() instanceof CellContent.Words words ? words.text() : "";
        findings.problem(
                entry.cell(),
                setting.label() + " " + must + ", found " + entry.content().shown() + "."
                        + CloseNames.maybe(found, setting.words()));
    }
}
