package org.bagwright.files;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A folder of this process among the system's temporary files, for one copy of a file at a time. On systems with such
 * rights only the owner can look into it; it is removed at the end, and by the next watch where the process was killed.
 */
final class PrivateCopy implements AutoCloseable {
    private static final String START = "bagwright-copy-";
    private static final Pattern NAME = Pattern.compile(START + "(\\d+)-\\d+");

    private final Path folder;

    private PrivateCopy(Path folder) {
        this.folder = folder;
    }

    /** @throws IOException if no folder can be made */
    static PrivateCopy open() throws IOException {
        PrivateCopy shelf = new PrivateCopy(
                Files.createTempDirectory(START + ProcessHandle.current().pid() + "-"));
        removeAbandoned(shelf.folder.getParent());
        return shelf;
    }

    /** Puts a copy there in place of the one before. */
    Path put(Path name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    @Override
    public void close() throws IOException {
        if (Files.exists(folder)) {
            remove(folder);
        }
    }

    /** What another user has left cannot be removed and is none of our business. */
    static void removeAbandoned(Path among) {
        try (DirectoryStream<Path> shelves = Files.newDirectoryStream(among, START + "*")) {
            for (Path shelf : shelves) {
                if (isAbandoned(shelf)) {
                    remove(shelf);
                }
            }
        } catch (IOException kept) {
            return;
        }
    }

    private static boolean isAbandoned(Path shelf) {
        Matcher name = NAME.matcher(shelf.getFileName().toString());
        return name.matches()
                && Files.isDirectory(shelf)
                && ProcessHandle.of(Long.parseLong(name.group(1))).isEmpty();
    }

    private static void remove(Path shelf) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(shelf)) {
            for (Path file : files) {
                Files.deleteIfExists(file);
            }
        }
        Files.deleteIfExists(shelf);
    }
}
