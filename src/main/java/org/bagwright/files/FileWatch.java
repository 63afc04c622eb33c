package org.bagwright.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.apache.commons.codec.digest.DigestUtils;
import org.apache.commons.compress.archivers.zip.ZipFile;

/**
 * Notices when another program has saved a file. Such programs write a file piece by piece, or another one that they then
 * rename over it, so a save counts once nothing has changed for a while; a file that is missing or cut short gets more
 * time. The same content is reported once.
 */
public final class FileWatch implements AutoCloseable {
    /** A file system may give two quick saves of one size the same time, so what was reported is read once more. */
    private static final long SURE_MS = 3000;

    private static final long STEP_MS = 50;

    private final Path file;
    private final Pace pace;
    private final FolderChanges changes;
    private final PrivateCopy copy;
    private Optional<FileMark> seen = Optional.empty();
    private Optional<FileMark> reported = Optional.empty();
    private boolean anyReported;
    private boolean sure;
    private String reportedSha256 = "";
    private long sinceNs = System.nanoTime();

    /**
     * How patient a watch is.
     *
     * @param quietMs how long a file must stay unchanged
     * @param graceMs how long a file must that is missing or not whole
     * @param pollMs how often to look where the folder reports no change
     */
    public record Pace(long quietMs, long graceMs, long pollMs) {
        /** For people and their spreadsheet programs. */
        public static final Pace USUAL = new Pace(100, 2000, 1000);
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
        changes = new FolderChanges(this.file.getParent());
        copy = PrivateCopy.open();
    }

    /**
     * Waits for the next save.
     *
     * @param mostMs the most milliseconds
     * @return empty where there was none in that time, or the watch was closed
     */
    public Optional<Saved> next(long mostMs) throws IOException {
        long startNs = System.nanoTime();
        while (!changes.isClosed() && sinceMs(startNs) < mostMs) {
            look();
            Optional<Saved> saved = isDue() ? taken() : Optional.empty();
            if (saved.isPresent()) {
                return saved;
            }
            changes.await(isReported() && sure ? pace.pollMs() : STEP_MS);
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

    private boolean isReported() {
        return anyReported && seen.equals(reported);
    }

    private boolean isDue() {
        return isReported() ? !sure && sinceMs(sinceNs) >= SURE_MS : sinceMs(sinceNs) >= pace.quietMs();
    }

    private static long sinceMs(long startNs) {
        return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - startNs);
    }

    private Optional<Saved> taken() throws IOException {
        Optional<byte[]> bytes = read();
        boolean moved = !FileMark.seen(file).equals(seen);
        boolean whole = bytes.isPresent() && isWhole(bytes.get());
        if (moved || (!whole && sinceMs(sinceNs) < pace.graceMs())) {
            return Optional.empty();
        }
        sure = isReported();
        reported = seen;
        anyReported = true;
        return saved(bytes);
    }

    /** The same content as before is no save. */
    private Optional<Saved> saved(Optional<byte[]> bytes) throws IOException {
        String content = bytes.map(DigestUtils::sha256Hex).orElse("none");
        if (content.equals(reportedSha256)) {
            return Optional.empty();
        }
        reportedSha256 = content;
        return Optional.of(new Saved(
                bytes.isPresent() ? Optional.of(copy.put(file.getFileName(), bytes.get())) : Optional.empty()));
    }

    /** A workbook is a zip, whose list of parts is written last. */
    private static boolean isWhole(byte[] bytes) {
        try (ZipFile zip = ZipFile.builder()
                .setByteArray(bytes)
                .setIgnoreLocalFileHeader(true)
                .get()) {
            return zip.getEntries().hasMoreElements();
        } catch (IOException | RuntimeException cutShort) {
            return false;
        }
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
        changes.close();
    }

    /** Ends the waiting and takes the copy away. */
    @Override
    public void close() throws IOException {
        stop();
        copy.close();
    }
}
