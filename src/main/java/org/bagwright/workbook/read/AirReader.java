package org.bagwright.workbook.read;

import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.AirConditions;
import org.bagwright.domain.units.Limit;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.schema.StartSetting;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.Quantity;
import org.bagwright.workbook.text.TemperatureUnit;
import org.bagwright.workbook.text.Unit;

/** Reads from the sheet Start the air in which the shots fly; what it leaves blank or gets wrong keeps the default. */
final class AirReader {
    private static final AirConditions USUAL = AirConditions.DEFAULT;

    private final StartSheet start;
    private final Units units;

    /** @param units the units of the book, where the sheet writes none */
    AirReader(StartSheet start, Units units) {
        this.start = start;
        this.units = units;
    }

    AirConditions air() {
        return new AirConditions(
                temperatureC().orElse(USUAL.temperatureC()),
                number(StartSetting.ALTITUDE, Quantity.ALTITUDE, Limit.ALTITUDE_M)
                        .orElse(USUAL.altitudeM()),
                humidityRatio().orElse(USUAL.humidityRatio()),
                number(StartSetting.HEAD_WIND, Quantity.SPEED, Limit.WIND_MPS).orElse(USUAL.headWindMps()),
                number(StartSetting.CROSS_WIND, Quantity.SPEED, Limit.WIND_MPS).orElse(USUAL.crossWindMps()));
    }

    private OptionalDouble temperatureC() {
        TemperatureUnit book = bookUnit();
        Optional<StartSheet.Entry> entry = start.entry(StartSetting.AIR_TEMPERATURE);
        return entry.isEmpty() ? OptionalDouble.empty() : temperatureC(entry.get(), book);
    }

    private OptionalDouble temperatureC(StartSheet.Entry entry, TemperatureUnit book) {
        Optional<TemperatureUnit> labelled = entry.unit().flatMap(TemperatureUnit::called);
        if (entry.unit().isPresent() && labelled.isEmpty()) {
            start.wrongUnit(StartSetting.AIR_TEMPERATURE, entry, "C, F");
            return OptionalDouble.empty();
        }
        TemperatureUnit unit = labelled.orElse(book);
        OptionalDouble value = unit.celsius(entry.content());
        Limit limit = Limit.AIR_TEMPERATURE_C;
        if (value.isPresent() && limit.holds(value.getAsDouble())) {
            return value;
        }
        start.wrong(StartSetting.AIR_TEMPERATURE, entry, "must be " + unit.inWords(limit));
        return OptionalDouble.empty();
    }

    private TemperatureUnit bookUnit() {
        Optional<StartSheet.Entry> entry = start.entry(StartSetting.TEMPERATURE);
        Optional<TemperatureUnit> unit = entry.flatMap(StartSheet.Entry::words).flatMap(TemperatureUnit::called);
        if (entry.isPresent() && unit.isEmpty()) {
            start.wrongWord(StartSetting.TEMPERATURE, entry.get());
        }
        return unit.orElse(TemperatureUnit.CELSIUS);
    }

    private OptionalDouble number(StartSetting setting, Quantity quantity, Limit limit) {
        Optional<StartSheet.Entry> entry = start.entry(setting);
        if (entry.isEmpty()) {
            return OptionalDouble.empty();
        }
        Optional<Unit> labelled = entry.get().unit().flatMap(quantity::unit);
        if (entry.get().unit().isPresent() && labelled.isEmpty()) {
            start.wrongUnit(setting, entry.get(), quantity.labels());
            return OptionalDouble.empty();
        }
        Unit unit = labelled.orElse(quantity.usual(units));
        OptionalDouble value = entry.get().number(quantity, unit);
        if (value.isPresent() && limit.holds(value.getAsDouble())) {
            return value;
        }
        start.wrong(setting, entry.get(), "must be " + unit.inWords(limit));
        return OptionalDouble.empty();
    }

    private OptionalDouble humidityRatio() {
        Optional<StartSheet.Entry> entry = start.entry(StartSetting.HUMIDITY);
        if (entry.isEmpty()) {
            return OptionalDouble.empty();
        }
        boolean percent = entry.get().unit().isPresent()
                || entry.get().words().filter(text -> text.contains("%")).isPresent();
        double number = withoutPercent(entry.get())
                .number(Quantity.PLAIN, Quantity.PLAIN.usual(units))
                .orElse(Double.NaN);
        double ratio = percent || number > 1 ? number / 100 : number;
        if (Limit.HUMIDITY_RATIO.holds(ratio)) {
            return OptionalDouble.of(ratio);
        }
        start.wrong(StartSetting.HUMIDITY, entry.get(), "must be 0 to 100 percent");
        return OptionalDouble.empty();
    }

    private static StartSheet.Entry withoutPercent(StartSheet.Entry entry) {
        CellContent content = entry.words()
                .map(text -> CellContent.words(text.replaceAll("\\s*(%|percent)$", "")))
                .orElse(entry.content());
        return new StartSheet.Entry(entry.cell(), content, entry.unit());
    }
}
