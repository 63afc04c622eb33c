package org.bagwright.domain.club;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.units.Checks;

/** A sleeve with its settings, in the order of the book. */
public record Sleeve(String name, List<SleeveSetting> settings) {
    public Sleeve {
        Checks.named(name, "sleeve");
        settings = List.copyOf(settings);
        Checks.that(!settings.isEmpty(), "a sleeve needs a setting");
    }

    /** The setting with this mark, ignoring case. */
    public Optional<SleeveSetting> setting(String mark) {
        return settings.stream()
                .filter(setting -> setting.mark().equalsIgnoreCase(mark))
                .findFirst();
    }
}
