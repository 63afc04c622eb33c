package org.bagwright.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book that another program saves while it is read. */
@Tag("regression")
class SourceFileTest {
    /** Only a busy machine writes two pieces so far apart; the file is quiet then. */
    private static final long QUIET_NS = TimeUnit.MILLISECONDS.toNanos(300);

    @TempDir
    Path folder;

    @Test
    void otherContent_isTold() throws Exception {
        Path path = Files.writeString(folder.resolve("bag.xlsx"), "one");
        SourceFile file = new SourceFile(path);
        assertArrayEquals("one".getBytes(StandardCharsets.UTF_8), file.bytes());
        file.requireUnchanged();
        Files.writeString(path, "two");
        assertThrows(SavedMeanwhileException.class, file::requireUnchanged);
        assertArrayEquals("one".getBytes(StandardCharsets.UTF_8), file.bytes());
        Files.delete(path);
        assertThrows(SavedMeanwhileException.class, file::requireUnchanged);
    }

    @Test
    void fileThatGrows_isWaitedFor() throws Exception {
        Path path = Files.writeString(folder.resolve("bag.xlsx"), "");
        SourceFile file = new SourceFile(path);
        CompletableFuture<Void> waiting = CompletableFuture.runAsync(() -> {
            try {
                file.awaitQuiet();
            } catch (InterruptedException unexpected) {
                throw new IllegalStateException(unexpected);
            }
        });
        long writtenNs = System.nanoTime();
        long longestPauseNs = 0;
        for (int piece = 0; piece < 20; piece++) {
            Files.writeString(path, "x".repeat(piece + 1));
            longestPauseNs = Math.max(longestPauseNs, System.nanoTime() - writtenNs);
            writtenNs = System.nanoTime();
            assertTrue(!waiting.isDone() || longestPauseNs >= QUIET_NS, "after " + piece + " pieces");
            TimeUnit.MILLISECONDS.sleep(50);
        }
        waiting.get(60, TimeUnit.SECONDS);
    }

    /** A quiet file costs one look, not the longest time that a file is waited for. */
    @Test
    void quietFile_isWaitedForOnce() throws Exception {
        SourceFile file = new SourceFile(Files.writeString(folder.resolve("bag.xlsx"), "one"));
        long startNs = System.nanoTime();
        file.awaitQuiet();
        assertTrue(System.nanoTime() - startNs < 10 * QUIET_NS);
    }
}
