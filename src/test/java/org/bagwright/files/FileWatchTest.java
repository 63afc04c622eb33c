package org.bagwright.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When a file counts as saved. */
@Tag("regression")
class FileWatchTest {
    private static final long LONG_MS = 30_000;
    private static final long SHORT_MS = 700;

    @TempDir
    Path folder;

    private Path file;
    private FileWatch watch;

    @BeforeEach
    void open() throws IOException {
        file = Files.write(folder.resolve("bag.xlsx"), zip("one"));
        watch = new FileWatch(file, new FileWatch.Pace(100, 400, 100));
    }

    @AfterEach
    void close() throws IOException {
        watch.close();
    }

    private static byte[] zip(String text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            ZipEntry part = new ZipEntry("part");
            part.setLastModifiedTime(FileTime.fromMillis(0));
            zip.putNextEntry(part);
            zip.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return bytes.toByteArray();
    }

    private byte[] next() throws IOException {
        Path copy = watch.next(LONG_MS).orElseThrow().copy().orElseThrow();
        assertEquals(file.getFileName(), copy.getFileName());
        assertFalse(copy.startsWith(folder));
        return Files.readAllBytes(copy);
    }

    @Test
    void firstContent_isToldAtOnceAndOnlyOnce() throws Exception {
        assertArrayEquals(zip("one"), next());
        assertEquals(Optional.empty(), watch.next(SHORT_MS));
        Files.write(file, zip("one"));
        assertEquals(Optional.empty(), watch.next(SHORT_MS), "saved again without a change");
    }

    @Test
    void fileCutShort_isNotToldWhereTheRestFollows() throws Exception {
        next();
        byte[] whole = zip("two");
        Files.write(file, Arrays.copyOf(whole, whole.length - 10));
        assertEquals(Optional.empty(), watch.next(250));
        Files.write(file, whole);
        assertArrayEquals(whole, next());
    }

    @Test
    void fileThatStaysCutShort_isToldAfterAWhile() throws Exception {
        next();
        byte[] cut = Arrays.copyOf(zip("two"), 20);
        Files.write(file, cut);
        assertArrayEquals(cut, next());
    }

    @Test
    void fileRenamedOverAnother_isToldAndTheMomentWithoutItIsNot() throws Exception {
        next();
        Path temporary = Files.write(folder.resolve("saving.tmp"), zip("two"));
        Files.delete(file);
        assertEquals(Optional.empty(), watch.next(200));
        Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE);
        assertArrayEquals(zip("two"), next());
    }

    @Test
    void missingFile_isToldAsSuch() throws Exception {
        next();
        Files.delete(file);
        assertTrue(watch.next(LONG_MS).orElseThrow().copy().isEmpty());
        Files.write(file, zip("one"));
        assertArrayEquals(zip("one"), next());
    }

    @Test
    void secondSaveOfOneSizeAndTime_isToldAllTheSame() throws Exception {
        FileTime time = Files.getLastModifiedTime(file);
        next();
        Files.write(file, zip("two"));
        Files.setLastModifiedTime(file, time);
        assertArrayEquals(zip("two"), next());
    }

    @Test
    void stop_endsTheWaitingFromAnotherThread() throws Exception {
        next();
        CompletableFuture<Boolean> waiting = CompletableFuture.supplyAsync(() -> {
            try {
                return watch.next(LONG_MS).isEmpty();
            } catch (IOException failed) {
                return false;
            }
        });
        watch.stop();
        assertTrue(waiting.get(10, TimeUnit.SECONDS));
    }

    @Test
    void close_takesTheCopyAway() throws Exception {
        Path copy = watch.next(LONG_MS).orElseThrow().copy().orElseThrow();
        watch.close();
        assertFalse(Files.exists(copy.getParent()));
    }
}
