package org.bagwright.search.team;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BiFunction;
import org.bagwright.search.exact.ExactEnding;
import org.bagwright.search.exact.Meter;

/** Works on several bags at once. Every bag has its own share of the steps, so the answers are the same on any run. */
final class BagBatch {
    private static final long LOOK_MS = 250;

    private final Meter meter;
    private final int threads;
    private final Runnable waiting;

    /**
     * @param threads how many bags are worked on at once
     * @param waiting run a few times a second while waiting
     */
    BagBatch(Meter meter, int threads, Runnable waiting) {
        this.meter = meter;
        this.threads = threads;
        this.waiting = waiting;
    }

    /**
     * The results of all bags.
     *
     * @param work one bag's work with a meter of its own; it may change that bag
     */
    <T> List<T> run(List<TeamBag> bags, BiFunction<TeamBag, Meter, T> work) {
        List<Meter> shares = new ArrayList<>();
        List<Callable<T>> calls = new ArrayList<>();
        for (TeamBag bag : bags) {
            Meter share = meter.share(meter.left() / bags.size());
            shares.add(share);
            calls.add(() -> work.apply(bag, share));
        }
        ExecutorService pool = Executors.newFixedThreadPool(threads, BagBatch::daemon);
        try {
            List<Future<T>> futures = calls.stream().map(pool::submit).toList();
            return futures.stream().map(this::await).toList();
        } finally {
            pool.shutdownNow();
            shares.forEach(share -> meter.add(share.steps()));
        }
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "bag search");
        thread.setDaemon(true);
        return thread;
    }

    private <T> T await(Future<T> future) {
        while (true) {
            try {
                return future.get(LOOK_MS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException notYet) {
                waiting.run();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                throw new Meter.Ended(ExactEnding.STOPPED);
            } catch (ExecutionException failed) {
                throw new IllegalStateException(failed.getCause());
            }
        }
    }
}
