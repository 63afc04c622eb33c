package org.bagwright.sessions;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bagwright.domain.text.ListText;

/**
 * What a person says about files of shots where they say nothing.
 *
 * @param golfer who hit the shots
 * @param date the day
 * @param settings the setting of a sleeve that is not today's: {@code CLUB=MARK}
 * @param speed the unit of speeds
 * @param distance the unit of distances
 */
public record SessionOptions(
        Optional<String> golfer,
        Optional<LocalDate> date,
        List<String> settings,
        Optional<String> speed,
        Optional<String> distance) {
    public SessionOptions {
        settings = List.copyOf(settings);
    }

    /** A club as typed and the mark of its setting. */
    record SettingOf(String club, String mark) {}

    List<SettingOf> settingsOf() throws WrongOptionException {
        List<SettingOf> found = new ArrayList<>();
        for (String setting : settings) {
            int equals = setting.lastIndexOf('=');
            if (equals < 1
                    || setting.substring(0, equals).isBlank()
                    || setting.substring(equals + 1).isBlank()) {
                throw new WrongOptionException(
                        "--setting must be \"CLUB=MARK\", such as \"Driver=2\", found \"" + setting + "\".");
            }
            found.add(new SettingOf(
                    setting.substring(0, equals).strip(),
                    setting.substring(equals + 1).strip()));
        }
        return found;
    }

    ColumnUnits.Given units() throws WrongOptionException {
        return new ColumnUnits.Given(
                unit("--speed", speed, FileUnit.SPEEDS), unit("--distance", distance, FileUnit.DISTANCES));
    }

    private static Optional<FileUnit> unit(String option, Optional<String> given, List<FileUnit> among)
            throws WrongOptionException {
        if (given.isEmpty()) {
            return Optional.empty();
        }
        Optional<FileUnit> unit = FileUnit.called(given.get(), among);
        if (unit.isEmpty()) {
            throw new WrongOptionException(option + " must be "
                    + ListText.oneOf(among.stream().map(FileUnit::label).collect(Collectors.toList())) + ", found \""
                    + given.get() + "\".");
        }
        return unit;
    }
}
