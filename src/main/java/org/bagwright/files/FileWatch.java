package org.bagwright.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * Tells when another program has saved a file anew. Such programs write a file piece by piece, or another one that they then
 * rename over it, so a file counts once it has lain still for a while; one that is missing or cut short gets more time.
 * The same content is told once.
 */
public final class FileWatch implements AutoCloseable {
    /** A file system may give two quick saves of one size the same time, so what was told is read once more. */
    private static final long SURE_MS = 3000;

    private static final long STEP_MS = 50;

    private final Path file;
    private final Pace pace;
    private final FolderChanges bell;
    private final PrivateCopy shelf;
    private Optional<FileMark> seen = Optional.empty();
    private Optional<FileMark> told = Optional.empty();
    private boolean anyTold;
    private boolean sure;
    private String toldContent = "";
    private long sinceNs = System.nanoTime();

    /**
     * How patient a watch is.
     *
     * @param quietMs how long a file must lie still
     * @param graceMs how long one must that is missing or not whole
     * @param pollMs how often to look where the folder tells of no change
     */
    public record Pace(long quietMs, long graceMs, long pollMs) {
        /** For people and their spreadsheet programs. */
        public static final Pace USUAL = new Pace(300, 2000, 1000);
    }

    /**
     * What was found.
     *
     * @param copy a copy of the file, under its name, until the next one is found; empty where it cannot be read
     */
    public record Saved(Optional<Path> copy) {}

    /** @throws IOException if there is no room for a copy of the file */
    public FileWatch(Path file, Pace pace) throws IOException {
        this.file = file.toAbsolutePath();
        this.pace = pace;
        bell = new FolderChanges(this.file.getParent());
        shelf = PrivateCopy.open();
    }

    /**
     * Waits for the next save.
     *
     * @param mostMs the most milliseconds
     * @return empty where there was none in that time, or the watch was closed
     */
    public Optional<Saved> next(long mostMs) throws IOException {
        long startNs = System.nanoTime();
        while (!bell.isClosed() && sinceMs(startNs) < mostMs) {
            look();
            Optional<Saved> saved = isDue() ? taken() : Optional.empty();
            if (saved.isPresent()) {
                return saved;
            }
            bell.await(isTold() && sure ? pace.pollMs() : STEP_MS);
        }
        return Optional.empty();
    }

    private void look() {
        Optional<FileMark> now = FileMark.seen(file);
        if (!now.equals(seen)) {
            seen = now;
            sinceNs = System.nanoTime();
        }
    }

    private boolean isTold() {
        return anyTold && seen.equals(told);
    }

    private boolean isDue() {
        return isTold() ? !sure && sinceMs(sinceNs) >= SURE_MS : sinceMs(sinceNs) >= pace.quietMs();
    }

    private static long sinceMs(long startNs) {
        return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - startNs);
    }

    private Optional<Saved> taken() throws IOException {
        Optional<byte[]> bytes = read();
        boolean moved = !FileMark.seen(file).equals(seen);
        boolean whole = bytes.isPresent() && ZipEnd.isThere(bytes.get());
        if (moved || (!whole && sinceMs(sinceNs) < pace.graceMs())) {
            return Optional.empty();
        }
        sure = isTold();
        told = seen;
        anyTold = true;
        String content = bytes.map(Sha256::of).orElse("none");
        if (content.equals(toldContent)) {
            return Optional.empty();
        }
        toldContent = content;
        return Optional.of(new Saved(
                bytes.isPresent() ? Optional.of(shelf.put(file.getFileName(), bytes.get())) : Optional.empty()));
    }

    private Optional<byte[]> read() {
        try {
            return Optional.of(Files.readAllBytes(file));
        } catch (IOException missingOrHeld) {
            return Optional.empty();
        }
    }

    /** Ends the waiting, from any thread; {@link #next} then gives nothing. */
    public void stop() {
        bell.close();
    }

    /** Ends the waiting and takes the copy away. */
    @Override
    public void close() throws IOException {
        stop();
        shelf.close();
    }
}
