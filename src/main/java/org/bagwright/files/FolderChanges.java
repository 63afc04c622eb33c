package org.bagwright.files;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Waits until something happens in a folder, or a time is over: network folders often report nothing. */
final class FolderChanges implements AutoCloseable {
    /** So that a folder in which much goes on costs no time. */
    private static final long LEAST_MS = 20;

    private final Optional<WatchService> events;
    private final CountDownLatch closed = new CountDownLatch(1);

    FolderChanges(Path folder) {
        events = watched(folder);
    }

    private static Optional<WatchService> watched(Path folder) {
        try {
            WatchService service = folder.getFileSystem().newWatchService();
            folder.register(
                    service,
                    StandardWatchEventKinds.ENTRY_CREATE,
                    StandardWatchEventKinds.ENTRY_MODIFY,
                    StandardWatchEventKinds.ENTRY_DELETE);
            return Optional.of(service);
        } catch (IOException | UnsupportedOperationException notHere) {
            return Optional.empty();
        }
    }

    /** Waits at most so many milliseconds; less if something happens in the folder or this is closed. */
    void await(long mostMs) {
        try {
            if (events.isPresent()) {
                awaitEvent(events.get(), mostMs);
            } else if (closed.await(mostMs, TimeUnit.MILLISECONDS)) {
                return;
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            close();
        }
    }

    private void awaitEvent(WatchService service, long mostMs) throws InterruptedException {
        try {
            WatchKey key = service.poll(mostMs, TimeUnit.MILLISECONDS);
            if (key != null) {
                Thread.sleep(LEAST_MS);
                key.pollEvents();
                key.reset();
            }
        } catch (ClosedWatchServiceException end) {
            closed.countDown();
        }
    }

    boolean isClosed() {
        return closed.getCount() == 0;
    }

    @Override
    public void close() {
        closed.countDown();
        events.ifPresent(FolderChanges::close);
    }

    private static void close(WatchService service) {
        try {
            service.close();
        } catch (IOException alreadyGone) {
            return;
        }
    }
}
