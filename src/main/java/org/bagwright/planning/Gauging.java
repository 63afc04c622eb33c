package org.bagwright.planning;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.CellChange;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.gauge.GaugedBook;
import org.bagwright.domain.gauge.Repeatability;
import org.bagwright.files.KeptFile;
import org.bagwright.files.SavedMeanwhileException;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.gauge.BookFits;
import org.bagwright.planning.gauge.Corrections;
import org.bagwright.workbook.read.BookReader;
import org.bagwright.workbook.result.GaugedCopy;

/** The use case of the gauge: learn heads and sleeves from readings, and write what was learnt into a copy of the book. */
public final class Gauging {
    private final Repeatability gauge;

    /** @param gauge how well the gauge repeats a reading, as far as it is known beforehand */
    public Gauging(Repeatability gauge) {
        this.gauge = gauge;
    }

    /**
     * What was written.
     *
     * @param backup the backup of the file that was replaced, if there was one
     * @param changes every cell written
     * @param notWritten what could not be written, and why
     */
    public record Written(Optional<KeptFile> backup, List<CellChange> changes, List<Message> notWritten) {
        public Written {
            changes = List.copyOf(changes);
            notWritten = List.copyOf(notWritten);
        }
    }

    /**
     * Fits every club that has readings.
     *
     * @throws WorkbookProblems if the book has a problem, or no readings
     * @throws IOException if the file cannot be read
     */
    public GaugedBook gauge(SourceFile file) throws WorkbookProblems, IOException {
        BookReader.Result read = BookReader.read(file);
        Book book = read.book().orElseThrow(() -> new WorkbookProblems(read.messages()));
        List<Message> messages = new ArrayList<>(new ClubProblems(book).all());
        if (book.readings().isEmpty()) {
            messages.add(Message.problem(
                    "Readings",
                    "there is no reading in this book; expected at least one row with a club, its setting and the"
                            + " loft and lie that the gauge read."));
        }
        if (!messages.isEmpty()) {
            messages.addAll(read.messages());
            throw new WorkbookProblems(messages);
        }
        BookFits fits = new BookFits(book, gauge);
        Corrections corrections = new Corrections(fits);
        messages.addAll(fits.messages());
        messages.addAll(corrections.messages());
        read.messages().stream()
                .filter(message -> message.severity() == Message.Severity.WARNING)
                .forEach(messages::add);
        return new GaugedBook(book, fits.repeatability(), fits.fits(), corrections.all(), messages);
    }

    /**
     * Writes a copy of the book with the gauged numbers in place of the stated ones. A file that is replaced is
     * kept as a backup.
     *
     * @param source the book from which was learnt
     * @throws WorkbookProblems if the target is open in another program
     * @throws SavedMeanwhileException if the book was saved since it was read
     * @throws IOException if the copy cannot be written, saying why in plain words
     */
    public static Written write(SourceFile source, GaugedBook gauged, Path target)
            throws WorkbookProblems, IOException {
        try (GaugedCopy copy = GaugedCopy.of(source)) {
            copy.put(gauged.corrections());
            Optional<KeptFile> backup = new Target(target).write(copy::writeTo, source);
            return new Written(backup, copy.changes(), copy.notWritten());
        }
    }
}
