package org.bagwright.sessions;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.session.PlainTable;

/** The rows below the headings of a file, each as a shot or with the reason why it is left out. */
final class TableRows {
    private static final Pattern SUMMARY = Pattern.compile(
            "(avg|average|averages|mean|median|st\\.? ?dev|std|std\\.? ?dev|sd|standard deviation|deviation|dev|spread|min"
                    + "|minimum|max|maximum|total|totals|sum|summary|consistency|\u00b1|\u03c3)\\b?[.:]?( .*)?"
                    + "|((session|group|club|overall|all|set) )?(avg|averages?|means?|deviations?|variance|range|best|worst"
                    + "|overall|dispersion)[.:]?",
            Pattern.CASE_INSENSITIVE);

    private final PlainTable table;
    private final Headings headings;
    private final ColumnUnits units;
    private final SessionOptions options;
    private final ClubSetups setups;
    private final Preamble above;
    private final List<PlainTable.Row> rows;
    private final NumberStyle numbers;
    private final DayStyle days;
    private final GolferNames golfers;
    private final Map<List<String>, Integer> seen = new HashMap<>();
    private final List<FileShot> shots = new ArrayList<>();
    private final List<Message> left = new ArrayList<>();

    TableRows(
            PlainTable table,
            Headings headings,
            ColumnUnits units,
            Book book,
            SessionOptions options,
            ClubSetups setups)
            throws WrongOptionException {
        this.table = table;
        this.headings = headings;
        this.units = units;
        this.options = options;
        this.setups = setups;
        this.above = new Preamble(headings.above());
        this.rows = headings.below().stream()
                .filter(row -> !row.isBlank() && !isHeadings(row))
                .filter(row -> !units.hasRow() || !units.isUnits(row))
                .toList();
        this.numbers = NumberStyle.of(rows.stream().flatMap(row -> headings.named().values().stream()
                .filter(column -> column.field().isNumber())
                .map(column -> row.cell(column.index()))));
        this.days =
                DayStyle.of(rows.stream().map(row -> text(row, ShotField.DATE)).toList());
        this.golfers = new GolferNames(book, options.golfer(), names());
    }

    private boolean isHeadings(PlainTable.Row row) {
        return row.cells().equals(headings.cells().cells());
    }

    private Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        rows.stream()
                .filter(row -> !isSummary(row))
                .map(this::golfer)
                .filter(name -> !name.isEmpty())
                .forEach(names::add);
        return names;
    }

    private String golfer(PlainTable.Row row) {
        String written = text(row, ShotField.GOLFER);
        return written.isEmpty() ? above.golfer() : written;
    }

    private String text(PlainTable.Row row, ShotField field) {
        NamedHeading column = headings.named().get(field);
        return column == null ? "" : row.cell(column.index());
    }

    void read() {
        for (PlainTable.Row row : rows) {
            try {
                shots.add(shot(row));
            } catch (BadRowException bad) {
                left.add(Message.warning(place(row), bad.getMessage()));
            }
        }
    }

    List<FileShot> shots() {
        return shots;
    }

    List<Message> left() {
        return left;
    }

    private String place(PlainTable.Row row) {
        return table.name() + " line " + row.line();
    }

    private FileShot shot(PlainTable.Row row) throws BadRowException {
        if (isSummary(row)) {
            throw new BadRowException("an average or another summary, not a shot.");
        }
        checkWidth(row);
        Integer first = seen.putIfAbsent(row.cells(), row.line());
        if (first != null) {
            throw new BadRowException("the same as line " + first + ".");
        }
        String name = text(row, ShotField.CLUB);
        if (name.isEmpty()) {
            throw new BadRowException("Club is blank.");
        }
        Golfer golfer = golfers.of(golfer(row));
        ClubNames clubs = setups.of(golfer);
        Club club = clubs.find(name).orElseThrow(() -> new BadRowException(clubs.notFound(name)));
        Map<ShotField, Double> values = values(row);
        Shot.Series series = new Shot.Series(
                day(row),
                values.containsKey(ShotField.SHOTS) ? count(values.remove(ShotField.SHOTS)) : 1,
                OptionalDouble.empty());
        return new FileShot(place(row), club, setups.setup(club, text(row, ShotField.SETTING)), series, values);
    }

    /** A summary names itself in some cell; a golfer may have such a name. */
    private boolean isSummary(PlainTable.Row row) {
        NamedHeading golfer = headings.named().get(ShotField.GOLFER);
        return IntStream.range(0, row.cells().size())
                .filter(index -> golfer == null || index != golfer.index())
                .anyMatch(index -> SUMMARY.matcher(row.cell(index)).matches());
    }

    private void checkWidth(PlainTable.Row row) throws BadRowException {
        for (int index = headings.width(); index < row.cells().size(); index++) {
            if (!row.cell(index).isEmpty()) {
                throw new BadRowException("the row has more cells than there are headings; maybe a comma in a number"
                        + " separates two cells.");
            }
        }
    }

    private Map<ShotField, Double> values(PlainTable.Row row) throws BadRowException {
        Map<ShotField, Double> values = new EnumMap<>(ShotField.class);
        for (NamedHeading column : headings.named().values()) {
            if (column.field().isNumber()) {
                OptionalDouble value =
                        new ShotCell(row.cell(column.index()), column.field()).value(numbers, units.of(column.field()));
                value.ifPresent(found -> values.put(column.field(), found));
            }
        }
        return values;
    }

    private static int count(double shots) throws BadRowException {
        if (shots != Math.rint(shots) || !ShotField.SHOTS.limit().holds(shots)) {
            throw new BadRowException("Shots must be a whole number from 1 to 1000.");
        }
        return (int) shots;
    }

    private Optional<LocalDate> day(PlainTable.Row row) throws BadRowException {
        String written = text(row, ShotField.DATE);
        String text = written.isEmpty() ? above.day() : written;
        if (text.isEmpty()) {
            return options.date();
        }
        Optional<LocalDate> day = days.day(text).or(options::date);
        if (day.isEmpty()) {
            throw new BadRowException("Date must be a day that can be read in one way, such as 2026-05-31, found "
                    + ShotCell.quoted(text) + "; or give --date.");
        }
        return day;
    }
}
