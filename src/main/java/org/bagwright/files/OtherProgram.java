package org.bagwright.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.bagwright.domain.book.Message;

/**
 * Whether a book is open in another program: by the owner's file next to an open book, or by its lock.
 *
 * @param book the book's file
 */
public record OtherProgram(Path book) {
    private static final Pattern IN_USE = Pattern.compile("(?i).*(another process|sharing violation|is locked).*");

    /** The file that a spreadsheet program puts next to a book while it is open there, where there is one. */
    Optional<Path> ownersFile() {
        Set<Path> places = new LinkedHashSet<>(Set.of(book.toAbsolutePath()));
        try {
            places.add(book.toRealPath());
        } catch (IOException notThere) {
            return Optional.empty();
        }
        return places.stream()
                .flatMap(place -> List.of("~$" + place.getFileName(), ".~lock." + place.getFileName() + "#").stream()
                        .map(place::resolveSibling))
                .filter(Files::isRegularFile)
                .findFirst();
    }

    /** What to know about a book that is read while it is open elsewhere. */
    public Optional<Message> note() {
        return ownersFile()
                .map(owner -> Message.warning(
                        name(),
                        "the book seems to be open in another program; changes not saved there are not seen here."));
    }

    /** Refuses to replace a book that another program has open, since its next save would undo the result. */
    void refuse() throws OpenElsewhereException {
        Optional<Path> owner = ownersFile();
        if (owner.isPresent()) {
            throw new OpenElsewhereException(
                    name(),
                    "the book is open in another program, as the file "
                            + owner.get().getFileName()
                            + " next to it shows. Close it there, then try again. If it is not open anywhere, a program"
                            + " crashed and left that file behind: delete " + owner.get() + " and try again.");
        }
        if (Files.exists(book) && isLocked()) {
            throw locked();
        }
    }

    /** A system's fault as the fault of a book that is open elsewhere, if it is one. */
    public Optional<OpenElsewhereException> from(IOException fault) {
        boolean inUse = fault instanceof FileSystemException
                && IN_USE.matcher(String.valueOf(fault.getMessage())).matches();
        return inUse ? Optional.of(locked()) : Optional.empty();
    }

    OpenElsewhereException changedMeanwhile() {
        return new OpenElsewhereException(
                name(),
                "another program has just written this book, so it was left unchanged. Close it there, then try"
                        + " again.");
    }

    private OpenElsewhereException locked() {
        return new OpenElsewhereException(
                name(), "another program has the book open and locked. Close it there, then try again.");
    }

    /** Opens the book for writing without writing, as an open spreadsheet program on some systems does not allow. */
    private boolean isLocked() {
        try (FileChannel channel = FileChannel.open(book, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            return lock == null;
        } catch (OverlappingFileLockException lockedHere) {
            return true;
        } catch (IOException fault) {
            return from(fault).isPresent();
        }
    }

    private String name() {
        return String.valueOf(book.getFileName());
    }
}
