package org.bagwright.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.bagwright.planning.Planning;

/** Until closed, Ctrl-C ends the search early and waits until the best plan so far is written; the exit code is 130. */
final class Interrupt {
    /** A big team's result takes a minute to write on a slow machine. */
    private static final long MOST_WAIT_S = 180;

    private static final long QUIET_S = 1;

    private final CountDownLatch written = new CountDownLatch(1);
    private final Thread hook;

    Interrupt(Planning planning) {
        hook = new Thread(() -> {
            planning.stop();
            await();
        });
        Runtime.getRuntime().addShutdownHook(hook);
    }

    private void await() {
        try {
            if (written.await(QUIET_S, TimeUnit.SECONDS)) {
                return;
            }
            System.err.println("bagwright: stopping; the best plan so far is still being written");
            if (!written.await(MOST_WAIT_S, TimeUnit.SECONDS)) {
                System.err.println("bagwright: stopped before the plan was written");
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    void close() {
        written.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException alreadyStopping) {
            // The hook runs and has just been let go.
            return;
        }
    }
}
