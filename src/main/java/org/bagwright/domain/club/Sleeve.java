package org.bagwright.domain.club;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.units.Checks;

/**
 * A sleeve.
 *
 * @param name what the book calls it
 * @param settings its settings, in the order of the book
 * @param cell where the book names it first
 */
public record Sleeve(String name, List<SleeveSetting> settings, String cell) {
    public Sleeve {
        Checks.named(name, "sleeve");
        settings = List.copyOf(settings);
        Checks.that(!settings.isEmpty(), "a sleeve needs a setting");
    }

    /** A sleeve of no book. */
    public Sleeve(String name, List<SleeveSetting> settings) {
        this(name, settings, "Sleeves");
    }

    /** The setting with this mark, ignoring case. */
    public Optional<SleeveSetting> setting(String mark) {
        return settings.stream()
                .filter(setting -> setting.mark().equalsIgnoreCase(mark))
                .findFirst();
    }
}
