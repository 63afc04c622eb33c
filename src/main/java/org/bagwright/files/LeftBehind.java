package org.bagwright.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.regex.Pattern;

/**
 * Temporary files that killed runs have left in a folder. They are known by name, owner, age and lock.
 *
 * @param own this run's own temporary file in that folder, whose time is the clock of the disk
 */
record LeftBehind(Path own) {
    static final String START = ".bagwright-";
    static final String END = ".tmp";

    /** How old a file must be, by the clock of its own disk, to count as left behind. */
    private static final Duration LEAST_AGE = Duration.ofHours(1);

    private static final Pattern NAME = Pattern.compile(Pattern.quote(START) + "\\d+" + Pattern.quote(END));

    /** Removes those that are certainly ours and unused. */
    void remove() {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(own.getParent(), START + "*" + END)) {
            FileTime now = Files.getLastModifiedTime(own);
            for (Path file : files) {
                if (NAME.matcher(file.getFileName().toString()).matches() && isLeftBehind(file, now)) {
                    removeUnlocked(file);
                }
            }
        } catch (IOException | DirectoryIteratorException notListed) {
            // Tidying may fail; what is written does not depend on it.
        }
    }

    private boolean isLeftBehind(Path file, FileTime now) throws IOException {
        if (file.equals(own) || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        Duration age = Duration.between(Files.getLastModifiedTime(file).toInstant(), now.toInstant());
        return age.compareTo(LEAST_AGE) > 0 && Files.getOwner(file).equals(Files.getOwner(own));
    }

    private static void removeUnlocked(Path file) {
        try (FileChannel unused = FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
                FileLock lock = unused.tryLock()) {
            if (lock != null) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | OverlappingFileLockException inUse) {
            // It may be in use, so it stays.
        }
    }
}
