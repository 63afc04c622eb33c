package org.bagwright.planning;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.session.AddedShots;
import org.bagwright.domain.session.PlainTable;
import org.bagwright.domain.session.SessionShots;
import org.bagwright.files.KeptFile;
import org.bagwright.files.SourceFile;
import org.bagwright.sessions.LearntHeadings;
import org.bagwright.sessions.SessionFileException;
import org.bagwright.sessions.SessionOptions;
import org.bagwright.sessions.SessionReader;
import org.bagwright.sessions.WrongOptionException;
import org.bagwright.workbook.cells.UnreadableBookException;
import org.bagwright.workbook.read.BookReader;
import org.bagwright.workbook.shots.PlainSheets;
import org.bagwright.workbook.shots.ShotsCopy;

/** The use case of sessions: files of shots are read and their shots added to a copy of the book. */
public final class AddingShots implements AutoCloseable {
    private final ShotsCopy copy;
    private final AddedShots result;
    private final SourceFile source;

    private AddingShots(SourceFile source, ShotsCopy copy, AddedShots result) {
        this.source = source;
        this.copy = copy;
        this.result = result;
    }

    /**
     * What a person asks for.
     *
     * @param files the files of shots
     * @param sheet the sheet that holds the shots in a workbook; the first with such headings where it is empty
     * @param columns what headings mean, each {@code HEADING=COLUMN}
     * @param options what the files do not say
     */
    public record Request(List<Path> files, Optional<String> sheet, List<String> columns, SessionOptions options) {
        public Request {
            files = List.copyOf(files);
            columns = List.copyOf(columns);
        }
    }

    /**
     * Reads all files; nothing is written yet.
     *
     * @throws WorkbookProblems if the book has a problem, or a file as a whole cannot be used
     * @throws WrongOptionException if an option does not fit the book or the files
     * @throws IOException if the book cannot be read
     */
    public static AddingShots read(SourceFile file, Request request)
            throws WorkbookProblems, WrongOptionException, IOException {
        BookReader.Result read = BookReader.read(file);
        Book book = read.book().orElseThrow(() -> new WorkbookProblems(read.messages()));
        LearntHeadings before = learnt(book);
        LearntHeadings learnt = before.with(request.columns());
        SessionReader reader = new SessionReader(book, request.options(), learnt);
        List<SessionShots> files = new ArrayList<>();
        for (Path session : request.files()) {
            files.add(session(reader, session, request.sheet()));
        }
        requireSeen(reader, request.columns());
        ShotsCopy copy = ShotsCopy.of(file, book);
        Optional<String> remembered =
                learnt.text().equals(before.text()) ? Optional.empty() : Optional.of(learnt.text());
        return new AddingShots(file, copy, add(book, copy, files, remembered));
    }

    private static LearntHeadings learnt(Book book) throws WorkbookProblems {
        try {
            return LearntHeadings.of(book.settings().shotHeadings());
        } catch (WrongOptionException wrong) {
            throw new WorkbookProblems(List.of(Message.problem("Start", "Shot headings: " + wrong.getMessage())));
        }
    }

    private static SessionShots session(SessionReader reader, Path file, Optional<String> sheet)
            throws WorkbookProblems, WrongOptionException, IOException {
        try {
            PlainSheets sheets = new PlainSheets(file);
            return sheets.isWorkbook() ? reader.read(chosen(sheets.tables(), file, sheet)) : reader.read(file);
        } catch (UnreadableBookException unreadable) {
            throw new WorkbookProblems(List.of(unreadable.found()));
        } catch (SessionFileException unusable) {
            throw new WorkbookProblems(unusable.found());
        }
    }

    private static List<PlainTable> chosen(List<PlainTable> tables, Path file, Optional<String> sheet)
            throws WrongOptionException {
        if (sheet.isEmpty()) {
            return tables;
        }
        List<PlainTable> called = tables.stream()
                .filter(table -> table.name().equalsIgnoreCase(PlainSheets.nameOf(file, sheet.get())))
                .toList();
        if (called.isEmpty()) {
            throw new WrongOptionException(
                    "--sheet must be a sheet of " + file.getFileName() + ", found \"" + sheet.get() + "\".");
        }
        return called;
    }

    private static void requireSeen(SessionReader reader, List<String> columns) throws WrongOptionException {
        for (String column : columns) {
            String heading = column.substring(0, column.lastIndexOf('=')).strip();
            if (!reader.hasSeen(heading)) {
                throw new WrongOptionException(
                        "--column names a heading that no file has, \"" + heading + "\"." + reader.maybeSeen(heading));
            }
        }
    }

    private static AddedShots add(Book book, ShotsCopy copy, List<SessionShots> files, Optional<String> learnt) {
        List<Shot> added = new ArrayList<>();
        List<Shot> already = new ArrayList<>();
        for (SessionShots file : files) {
            Set<Shot> these = new LinkedHashSet<>(copy.add(file.shots()));
            file.shots().forEach(shot -> (these.contains(shot) ? added : already).add(shot));
        }
        learnt.ifPresent(copy::learn);
        List<Message> messages = new ArrayList<>(copy.notWritten());
        boolean undated = added.stream().anyMatch(shot -> shot.series().date().isEmpty());
        if (undated) {
            messages.add(Message.note("Shots", "the files do not say the day of some shots; give --date to keep it."));
        }
        return new AddedShots(book.settings().units(), files, added, already, learnt, messages);
    }

    public AddedShots result() {
        return result;
    }

    /**
     * Writes the copy of the book. A file that is replaced is kept as a backup.
     *
     * @throws WorkbookProblems if the target is open in another program
     * @throws IOException if the copy cannot be written, saying why in plain words
     */
    public Optional<KeptFile> write(Path target) throws WorkbookProblems, IOException {
        return new Target(target).write(copy::writeTo, source);
    }

    @Override
    public void close() throws IOException {
        copy.close();
    }
}
