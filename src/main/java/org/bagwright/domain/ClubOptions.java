package org.bagwright.domain;

import java.util.List;

/**
 * A club with every option it has.
 *
 * @param club the club
 * @param options all options, at least one
 * @param todayIndex which of them is today's
 * @param openIndexes which of them a plan may take; at least one
 */
public record ClubOptions(Club club, List<Option> options, int todayIndex, List<Integer> openIndexes) {
    public ClubOptions {
        options = List.copyOf(options);
        openIndexes = List.copyOf(openIndexes);
        Checks.that(todayIndex >= 0 && todayIndex < options.size(), "today must be one of the options");
        Checks.that(!openIndexes.isEmpty(), "a plan needs an open option for every club");
    }

    public Option today() {
        return options.get(todayIndex);
    }
}
