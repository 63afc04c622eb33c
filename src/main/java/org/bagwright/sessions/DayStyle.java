package org.bagwright.sessions;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a file writes its days where that can be read in two ways: told from those that can be read in one only.
 *
 * @param dayFirst whether some have the day first
 * @param monthFirst whether some have the month first
 */
record DayStyle(boolean dayFirst, boolean monthFirst) {
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})(?:[T ,].*)?");
    private static final Pattern YEAR_LAST = Pattern.compile("(\\d{1,2})([-/.])(\\d{1,2})\\2(\\d{4})(?:[T ,].*)?");
    private static final Pattern DAY_MONTH =
            Pattern.compile("(\\d{1,2})\\.?[- ]([A-Za-z]{3,9})\\.?,?[- ](\\d{4})(?:[T ,].*)?");
    private static final Pattern MONTH_DAY =
            Pattern.compile("([A-Za-z]{3,9})\\.? (\\d{1,2})(?:st|nd|rd|th)?,? (\\d{4})(?:[T ,].*)?");
    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
    private static final LocalDate FIRST_DAY = LocalDate.of(1990, 1, 1);
    private static final LocalDate LAST_DAY = LocalDate.of(2099, 12, 31);
    private static final int MONTHS_A_YEAR = 12;

    static DayStyle of(List<String> days) {
        List<MatchResult> found = days.stream()
                .map(text -> YEAR_LAST.matcher(text.strip()))
                .filter(Matcher::matches)
                .map(Matcher::toMatchResult)
                .toList();
        return new DayStyle(
                found.stream().anyMatch(day -> number(day.group(1)) > MONTHS_A_YEAR),
                found.stream().anyMatch(day -> number(day.group(3)) > MONTHS_A_YEAR));
    }

    private static int number(String digits) {
        return Integer.parseInt(digits);
    }

    /** The day; empty where the text is none or can be read in two ways. */
    Optional<LocalDate> day(String written) {
        String text = written.strip();
        Matcher yearFirst = YEAR_FIRST.matcher(text);
        Matcher yearLast = YEAR_LAST.matcher(text);
        Matcher dayMonth = DAY_MONTH.matcher(text);
        Matcher monthDay = MONTH_DAY.matcher(text);
        if (yearFirst.matches()) {
            return day(yearFirst.group(1), yearFirst.group(2), yearFirst.group(3));
        }
        if (yearLast.matches()) {
            return yearLast(yearLast);
        }
        if (dayMonth.matches()) {
            return day(dayMonth.group(3), month(dayMonth.group(2)), dayMonth.group(1));
        }
        return monthDay.matches()
                ? day(monthDay.group(3), month(monthDay.group(1)), monthDay.group(2))
                : Optional.empty();
    }

    private Optional<LocalDate> yearLast(Matcher found) {
        boolean dots = found.group(2).equals(".");
        boolean same = number(found.group(1)) == number(found.group(3));
        if (dots || same || (dayFirst && !monthFirst)) {
            return day(found.group(4), found.group(3), found.group(1));
        }
        return monthFirst && !dayFirst ? day(found.group(4), found.group(1), found.group(3)) : Optional.empty();
    }

    private static String month(String name) {
        return String.valueOf(1 + MONTHS.indexOf(name.substring(0, 3).toLowerCase(Locale.ROOT)));
    }

    private static Optional<LocalDate> day(String year, String month, String day) {
        try {
            return Optional.of(LocalDate.of(number(year), number(month), number(day)))
                    .filter(found -> !found.isBefore(FIRST_DAY) && !found.isAfter(LAST_DAY));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }
}
