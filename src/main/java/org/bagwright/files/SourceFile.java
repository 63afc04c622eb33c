package org.bagwright.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** A file that is read once: whoever asks for its content later gets the bytes of the first time. */
public final class SourceFile {
    private static final long QUIET_MS = 300;
    private static final long MOST_STEPS = 10;

    private final Path path;
    private byte[] bytes;

    public SourceFile(Path path) {
        this.path = path;
    }

    public Path path() {
        return path;
    }

    /**
     * Its content, not to be changed.
     *
     * @throws IOException if the file cannot be read the first time
     */
    public synchronized byte[] bytes() throws IOException {
        if (bytes == null) {
            bytes = Files.readAllBytes(path);
        }
        return bytes;
    }

    /**
     * Compares the file with what was read of it.
     *
     * @throws SavedMeanwhileException if it has other content now, or is gone
     * @throws IOException if it cannot be read
     */
    public void requireUnchanged() throws IOException {
        if (!isUnchanged()) {
            throw new SavedMeanwhileException(path);
        }
    }

    private boolean isUnchanged() throws IOException {
        try {
            return Files.size(path) == bytes().length && Arrays.equals(bytes(), Files.readAllBytes(path));
        } catch (NoSuchFileException gone) {
            return false;
        }
    }

    /** Waits until the file has not changed for a moment, as another program may still write it, but not for long. */
    public void awaitQuiet() throws InterruptedException {
        for (int step = 0; step < MOST_STEPS; step++) {
            Optional<FileMark> before = FileMark.seen(path);
            TimeUnit.MILLISECONDS.sleep(QUIET_MS);
            if (before.isPresent() && before.equals(FileMark.seen(path))) {
                return;
            }
        }
    }
}
