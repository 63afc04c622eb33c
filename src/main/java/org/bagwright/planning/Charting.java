package org.bagwright.planning;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.LiveChoice;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Messages;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.ChartedBook;
import org.bagwright.domain.plan.TodayChange;
import org.bagwright.domain.plan.WorkProgress;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.live.LiveChecks;
import org.bagwright.planning.live.LiveStart;
import org.bagwright.planning.options.BagMaker;
import org.bagwright.workbook.cells.ColumnPlaces;
import org.bagwright.workbook.read.BookReader;

/**
 * The use cases before a plan: check a book, and chart every option of its clubs.
 *
 * @param file the book
 * @param work takes reports of the stage of the work
 */
public record Charting(SourceFile file, WorkProgress work) {

    /** For nobody who waits. */
    public Charting(Path file) {
        this(new SourceFile(file), WorkProgress.NONE);
    }

    /**
     * Everything to know about the book before it is planned, problems first.
     *
     * @throws IOException if the file cannot be read
     */
    public List<Message> check() throws IOException {
        try {
            return chart().messages();
        } catch (WorkbookProblems problems) {
            return problems.messages();
        }
    }

    /**
     * Computes every option of every club.
     *
     * @throws WorkbookProblems if the book has a problem
     * @throws IOException if the file cannot be read
     */
    public ChartedBook chart() throws WorkbookProblems, IOException {
        return forPlan().book();
    }

    /** As {@link #chart}, for a plan. */
    public Charted forPlan() throws WorkbookProblems, IOException {
        return new Reading().charted();
    }

    /**
     * A book whose live choices have become today's set-up.
     *
     * @param charted the book with all its options, counted from there
     * @param changes what differs from its sheet Clubs
     */
    public record FromLive(Charted charted, List<TodayChange> changes) {
        public FromLive {
            changes = List.copyOf(changes);
        }
    }

    /**
     * As {@link #chart} with the live choices of the sheet Plan in the place of today's set-up.
     *
     * @return empty where the book has no sheet Plan of an earlier run
     * @throws WorkbookProblems if the book has a problem, or a live choice is no option
     */
    public Optional<FromLive> fromLive() throws WorkbookProblems {
        Reading reading = new Reading();
        Book book = reading.book;
        if (book.liveChoices().isEmpty()) {
            return Optional.empty();
        }
        BookOptions options = new BagMaker(book, work).bags();
        reading.add(new LiveChecks(options, "the live choice").problems(book.liveChoices()));
        reading.refuseProblems();
        LiveStart start = new LiveStart(book, options);
        List<TodayChange> changes = start.changes();
        return Optional.of(new FromLive(reading.charted(start.book(changes)), changes));
    }

    /** A book as it is read, with all that is found about it on the way. */
    private final class Reading {
        private final List<Message> messages = new ArrayList<>();
        private final ColumnPlaces places;
        private final Book book;

        Reading() throws WorkbookProblems {
            work.at(WorkProgress.Stage.READING, 0, 0);
            BookReader.Result read = BookReader.read(file);
            if (read.book().isEmpty()) {
                throw new WorkbookProblems(new Messages(read.messages()).inOrder());
            }
            places = read.places();
            book = read.book().get();
            add(read.clashes());
            add(read.messages());
            add(new ClubProblems(book).all());
            add(BagOrder.messages(book));
            refuseProblems();
        }

        private void add(List<Message> found) {
            messages.addAll(places.located(found));
        }

        private void refuseProblems() throws WorkbookProblems {
            if (messages.stream().anyMatch(message -> message.severity() == Message.Severity.PROBLEM)) {
                throw new WorkbookProblems(new Messages(messages).inOrder());
            }
        }

        private Charted charted() throws WorkbookProblems {
            return charted(book);
        }

        /** Whether a wish is far off because of another warning: one of the same club, or of shots for a carry. */
        private boolean explains(Message told, Message wish) {
            boolean isCarry = wish.text().startsWith("Carry") || wish.text().startsWith("Gap");
            return told.severity() == Message.Severity.WARNING
                    && told.cells().stream()
                            .anyMatch(cell ->
                                    row(cell).equals(row(wish.cell())) || (isCarry && cell.startsWith("Shots!")));
        }

        private String row(String cell) {
            return cell.replaceAll("![A-Z]+", "!");
        }

        /** The options of this book, perhaps with other clubs than were read. */
        private Charted charted(Book started) throws WorkbookProblems {
            BagMaker maker = new BagMaker(started, work);
            BookOptions options = maker.bags();
            add(maker.messages());
            places.located(maker.farWishes()).stream()
                    .filter(wish -> messages.stream().noneMatch(told -> explains(told, wish)))
                    .forEach(messages::add);
            add(new LiveChecks(options, "the pinned choice")
                    .problems(started.liveChoices().stream()
                            .filter(LiveChoice::pinned)
                            .toList()));
            refuseProblems();
            add(GaugeMessages.of(started));
            add(BalanceMessages.of(started));
            return new Charted(new ChartedBook(started, options, new Messages(messages).inOrder()), maker);
        }
    }
}
