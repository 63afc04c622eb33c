package org.bagwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What ends the waiting for a change in a folder. */
@Tag("regression")
@Timeout(60)
class FolderChangesTest {
    private static final long FOR_EVER_MS = TimeUnit.HOURS.toMillis(1);

    @TempDir
    Path folder;

    @Test
    void newFile_endsTheWaitingAndLeavesItOpen() throws Exception {
        try (FolderChanges changes = new FolderChanges(folder)) {
            CompletableFuture<Void> waiting = CompletableFuture.runAsync(() -> changes.await(FOR_EVER_MS));
            for (int file = 0; !waiting.isDone(); file++) {
                Files.writeString(folder.resolve("file" + file), "");
                TimeUnit.MILLISECONDS.sleep(50);
            }
            assertFalse(changes.isClosed());
        }
    }

    /** Less would have the program look at a folder in which nothing happens without a pause. */
    @Test
    void withoutAChange_theWholeTimeIsWaited() {
        try (FolderChanges changes = new FolderChanges(folder)) {
            long startNs = System.nanoTime();
            changes.await(300);
            assertTrue(System.nanoTime() - startNs >= TimeUnit.MILLISECONDS.toNanos(290));
        }
    }

    @Test
    void close_endsTheWaiting() throws Exception {
        FolderChanges changes = new FolderChanges(folder);
        CompletableFuture<Void> waiting = CompletableFuture.runAsync(() -> changes.await(FOR_EVER_MS));
        TimeUnit.MILLISECONDS.sleep(100);
        changes.close();
        assertEquals(null, waiting.get());
        assertTrue(changes.isClosed());
    }

    @Test
    void interruption_endsTheWaitingForGood() throws Exception {
        FolderChanges changes = new FolderChanges(folder);
        CompletableFuture<Boolean> interrupted = new CompletableFuture<>();
        Thread waiting = new Thread(() -> {
            changes.await(FOR_EVER_MS);
            interrupted.complete(Thread.currentThread().isInterrupted());
        });
        waiting.start();
        waiting.interrupt();
        assertTrue(interrupted.get());
        assertTrue(changes.isClosed());
    }
}
