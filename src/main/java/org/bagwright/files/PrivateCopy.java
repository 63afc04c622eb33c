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
        PrivateCopy copy = new PrivateCopy(
                Files.createTempDirectory(START + ProcessHandle.current().pid() + "-"));
        removeAbandoned(copy.folder.getParent());
        return copy;
    }

    /** Writes a copy there in place of the one before. */
    Path put(Path name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    @Override
    public void close() throws IOException {
        if (Files.exists(folder)) {
            remove(folder);
        }
    }

    /** Removes the folders of processes that have ended; what another user has left cannot be removed. */
    static void removeAbandoned(Path among) {
        try (DirectoryStream<Path> folders = Files.newDirectoryStream(among, START + "*")) {
            for (Path folder : folders) {
                if (isAbandoned(folder)) {
                    remove(folder);
                }
            }
        } catch (IOException kept) {
            return;
        }
    }

    private static boolean isAbandoned(Path folder) {
        Matcher name = NAME.matcher(folder.getFileName().toString());
        return name.matches()
                && Files.isDirectory(folder)
                && ProcessHandle.of(Long.parseLong(name.group(1))).isEmpty();
    }

    private static void remove(Path folder) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                Files.deleteIfExists(file);
            }
        }
        Files.deleteIfExists(folder);
    }
}
