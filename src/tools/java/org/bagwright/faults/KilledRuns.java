package org.bagwright.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.bagwright.cli.text.Terminal;

/** Runs of {@code plan --in-place} as processes of their own, each killed outright at some moment. */
final class KilledRuns {
    /** What a run is waited for before the time to its end starts to count. */
    enum From {
        START("anywhere in the run"),
        TEMPORARY("while the result is written"),
        SECOND_FILE("between backup and renaming");

        private final String words;

        From(String words) {
            this.words = words;
        }

        private boolean isSeen(Aftermath seen) {
            int ours = seen.leftovers().size() + seen.backups().size();
            return switch (this) {
                case START -> true;
                case TEMPORARY -> ours > 0;
                case SECOND_FILE -> ours > 1;
            };
        }
    }

    private static final long MOST_RUN_S = 120;
    /** Steps of this part of the whole fall evenly however many of them are taken. */
    private static final double GOLDEN = 0.618033988749895;

    private static final long LOOK_NS = 300_000;
    private static final long RENAMING_NS = 12_000_000;

    private final Path root;
    private final Launched launched;
    private final byte[] demo;
    private final double offset = new Random(1).nextDouble();
    private final long endNs;
    private long wholeNs;
    private long writingNs;
    private int temporaryThere;
    private int cleaned;

    KilledRuns(Path root, Launched launched, Duration most) throws IOException {
        this.root = root;
        this.launched = launched;
        this.endNs = System.nanoTime() + most.toNanos();
        this.demo = Files.readAllBytes(Path.of("demo-data", "trio.xlsx"));
    }

    /** Measures one run that nobody kills. */
    void measure() throws IOException, InterruptedException {
        Path book = fresh("measured");
        long startNs = System.nanoTime();
        Process run = launched.plan(book).start();
        await(run, book, From.TEMPORARY);
        long seenNs = System.nanoTime();
        finish(run);
        wholeNs = System.nanoTime() - startNs;
        writingNs = System.nanoTime() - seenNs;
    }

    /** Kills so many runs, or as many as the time allows, at moments spread over what follows {@code from}. */
    FaultRow kill(From from, int kills) throws IOException, InterruptedException {
        FaultRow row = new FaultRow("killed outright (SIGKILL), " + from.words);
        temporaryThere = 0;
        cleaned = 0;
        for (int index = 0; index < kills; index++) {
            if (System.nanoTime() - endNs > 0) {
                break;
            }
            double part = (offset + index * GOLDEN) % 1;
            one(row, from, part, index);
            System.out.println(from + " " + (index + 1) + "/" + kills + " "
                    + row.outcomes().get(index) + " lost " + row.losses().size());
        }
        return row.note("a temporary file stood there after " + temporaryThere + " of them and was removed by the next"
                + " run after " + cleaned);
    }

    private void one(FaultRow row, From from, double part, int index) throws IOException, InterruptedException {
        Path book = fresh(from.name() + index);
        Process run = launched.plan(book).start();
        await(run, book, from);
        waitNs(run, (long) (part * spanNs(from)));
        boolean ended = !run.isAlive();
        run.destroyForcibly();
        finish(run);
        Aftermath after = Aftermath.of(book, demo);
        List<String> losses = new ArrayList<>(after.losses());
        String state = after.isOld() ? (after.backups().isEmpty() ? "old book" : "old book and backup") : "new book";
        if (!after.leftovers().isEmpty()) {
            temporaryThere++;
            losses.addAll(cleanedUp(book, after));
        }
        row.tried(ended ? "ran to its end" : state, losses);
    }

    private long spanNs(From from) {
        return switch (from) {
            case START -> wholeNs;
            case TEMPORARY -> writingNs;
            case SECOND_FILE -> RENAMING_NS;
        };
    }

    /** The next run, an hour and more later as the leftover's own time says, removes it and does its work. */
    private List<String> cleanedUp(Path book, Aftermath after) throws IOException {
        FileTime longAgo = FileTime.from(Instant.now().minus(Duration.ofHours(2)));
        for (Path leftover : after.leftovers()) {
            Files.setLastModifiedTime(leftover, longAgo);
        }
        Terminal next = Terminal.run("plan", book, "--in-place");
        Aftermath later = Aftermath.of(book, demo);
        List<String> losses = new ArrayList<>(later.losses());
        if (next.code() != 0 || later.isOld() || !later.leftovers().isEmpty()) {
            losses.add("the next run said " + next.code() + " and left " + later.leftovers());
        } else {
            cleaned++;
        }
        return losses;
    }

    private Path fresh(String name) throws IOException {
        Path folder = Files.createDirectories(root.resolve(name));
        return Files.write(folder.resolve("bag.xlsx"), demo);
    }

    private static void await(Process run, Path book, From from) throws IOException {
        while (run.isAlive() && !from.isSeen(Aftermath.of(book, new byte[0]))) {
            LockSupport.parkNanos(LOOK_NS);
        }
    }

    private static void waitNs(Process run, long ns) throws InterruptedException {
        long endNs = System.nanoTime() + ns;
        while (System.nanoTime() < endNs && run.isAlive()) {
            if (endNs - System.nanoTime() > 2_000_000) {
                Thread.sleep(1);
            }
        }
    }

    private static void finish(Process run) throws InterruptedException {
        if (!run.waitFor(MOST_RUN_S, TimeUnit.SECONDS)) {
            run.destroyForcibly().waitFor();
        }
    }
}
