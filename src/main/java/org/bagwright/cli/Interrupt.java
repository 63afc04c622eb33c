package org.bagwright.cli;

import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.bagwright.planning.Planning;

/**
 * Until closed, Ctrl-C ends the search early and waits until the best plan so far is explained and written; the exit code is
 * 130. A second Ctrl-C ends at once: a file is replaced whole or not at all, so nothing is lost.
 */
final class Interrupt {
    /** A big team's result takes a minute to write on a slow machine. */
    private static final long MOST_WAIT_S = 180;

    private static final int STOPPED = 130;

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
        boolean canEnd = onCtrlC(() -> Runtime.getRuntime().halt(STOPPED));
        System.err.println("bagwright: stopping; the best plan so far gets a short explanation, then it is written"
                + (canEnd ? ". Press Ctrl-C again to end at once and leave the book as it is" : ""));
        try {
            if (!written.await(MOST_WAIT_S, TimeUnit.SECONDS)) {
                System.err.println("bagwright: stopped before the plan was written");
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /**
     * What to do on the next Ctrl-C; whether this Java can. The class for signals is in every JDK but in no standard, so it
     * is looked up by its name.
     */
    private static boolean onCtrlC(Runnable action) {
        try {
            Class<?> signal = Class.forName("sun.misc.Signal");
            Class<?> handler = Class.forName("sun.misc.SignalHandler");
            Object runs = Proxy.newProxyInstance(
                    Interrupt.class.getClassLoader(), new Class<?>[] {handler}, (proxy, method, given) -> {
                        action.run();
                        return null;
                    });
            Method handle = signal.getMethod("handle", signal, handler);
            handle.invoke(null, signal.getConstructor(String.class).newInstance("INT"), runs);
            return true;
        } catch (ReflectiveOperationException | IllegalArgumentException none) {
            return false;
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
