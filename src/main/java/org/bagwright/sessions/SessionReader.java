package org.bagwright.sessions;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.session.PlainTable;
import org.bagwright.domain.session.SessionShots;
import org.bagwright.domain.session.SessionShots.UsedHeading;
import org.bagwright.domain.text.CloseNames;

/** Reads files of shots for a book. */
public final class SessionReader {
    private final Book book;
    private final SessionOptions options;
    private final LearntHeadings learnt;
    private final ClubSetups setups;
    private final Set<String> headingsSeen = new HashSet<>();

    /**
     * A reader for one book.
     *
     * @param learnt what headings mean that say it not in words of the trade
     * @throws WrongOptionException if an option names what the book has not
     */
    public SessionReader(Book book, SessionOptions options, LearntHeadings learnt) throws WrongOptionException {
        this.book = book;
        this.options = options;
        this.learnt = learnt;
        this.setups = new ClubSetups(book, options);
        options.units();
    }

    /**
     * Reads a file of text.
     *
     * @throws SessionFileException if the file as a whole cannot be used
     * @throws WrongOptionException if an option fits neither book nor file
     */
    public SessionShots read(Path file) throws SessionFileException, WrongOptionException {
        return read(List.of(new SeparatedText(new TextFile(file)).table(table -> Headings.known(table, learnt))));
    }

    /**
     * Reads the first table that has headings of shots.
     *
     * @param tables the sheets of a workbook
     * @throws SessionFileException if there is none, or it cannot be used
     * @throws WrongOptionException if an option fits neither book nor file
     */
    public SessionShots read(List<PlainTable> tables) throws SessionFileException, WrongOptionException {
        SessionFileException first = null;
        for (PlainTable table : tables) {
            try {
                Headings headings = Headings.of(table, learnt);
                headings.cells().cells().forEach(text -> headingsSeen.add(new HeadingText(text.strip()).key()));
                return read(table, headings);
            } catch (SessionFileException none) {
                if (first == null || Headings.known(table, learnt) > 0) {
                    first = none;
                }
                if (Headings.known(table, learnt) > 1) {
                    break;
                }
            }
        }
        throw first == null ? new SessionFileException("The file", "it has no sheet.") : first;
    }

    /** Whether some file had this heading. */
    public boolean hasSeen(String heading) {
        return headingsSeen.contains(new HeadingText(heading).key());
    }

    /** The heading of a file that a text, which is none, is probably a slip of, as a question; empty where there is none. */
    public String maybeSeen(String heading) {
        return CloseNames.maybe(heading, headingsSeen);
    }

    private SessionShots read(PlainTable table, Headings headings) throws SessionFileException, WrongOptionException {
        ColumnUnits units =
                new ColumnUnits(headings, options.units(), book.settings().units());
        TableRows rows = new TableRows(table, headings, units, book, options, setups);
        rows.read();
        new UnitChecks(book, headings, units).check(rows.shots());
        List<Shot> shots = new ArrayList<>();
        List<Message> left = new ArrayList<>(rows.left());
        for (FileShot found : rows.shots()) {
            try {
                shots.add(found.shot(units));
            } catch (BadRowException bad) {
                left.add(Message.warning(found.place(), bad.getMessage()));
            }
        }
        left.sort((a, b) -> Integer.compare(line(a), line(b)));
        if (shots.isEmpty()) {
            throw new SessionFileException(nothing(table, left));
        }
        return new SessionShots(table.name(), used(headings, units), headings.notUsed(), shots, left);
    }

    private static int line(Message message) {
        return Integer.parseInt(message.cell().replaceAll(".* line ", ""));
    }

    private static List<Message> nothing(PlainTable table, List<Message> left) {
        List<Message> all = new ArrayList<>();
        all.add(Message.problem(table.name(), "no row of the file holds a shot that can be added."));
        left.stream().limit(10).forEach(each -> all.add(Message.problem(each.cell(), each.text())));
        return all;
    }

    private static List<UsedHeading> used(Headings headings, ColumnUnits units) {
        return headings.named().values().stream()
                .map(column -> new UsedHeading(
                        column.heading().text(),
                        column.field().column(),
                        Optional.ofNullable(units.of(column.field()))
                                .map(told -> told.unit().label()),
                        Optional.ofNullable(units.of(column.field()))
                                .map(ColumnUnits.Told::from)
                                .orElse("")))
                .toList();
    }
}
