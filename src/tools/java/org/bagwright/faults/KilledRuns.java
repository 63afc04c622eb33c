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

/** Runs of a command as processes of their own, each killed outright at some moment. */
final class KilledRuns {
    /** What a run is waited for before the time to its end starts to count. */
    enum From {
        START("anywhere in the run"),
        TEMPORARY("while the result is made and written"),
        FIRST_BYTE("between the first byte of the temporary file and the rename"),
        SECOND_FILE("between the backup and the rename");

        private final String words;

        From(String words) {
            this.words = words;
        }

        private boolean isSeen(Aftermath seen) {
            int ours = seen.leftovers().size() + seen.backups().size();
            return switch (this) {
                case START -> true;
                case TEMPORARY -> ours > 0;
                case FIRST_BYTE -> seen.hasFirstByte();
                case SECOND_FILE -> ours > 1;
            };
        }
    }

    private static final long MOST_RUN_S = 120;
    /** Steps of this part of the whole fall evenly however many runs are killed. */
    private static final double GOLDEN = 0.618033988749895;

    /** How the next moment moves after a kill that fell in time, and after one that came too late. */
    private static final double LATER = 1.1;

    private static final double EARLIER = 0.7;
    private static final long LOOK_NS = 50_000;
    private static final long RENAMING_NS = 12_000_000;

    private final Path root;
    private final Launched launched;
    private final KilledCommand command;
    private final byte[] demo;
    private final double offset = new Random(1).nextDouble();
    private final long endNs;
    private long wholeNs;
    private long writingNs;
    private long firstByteNs;
    private Aftermath.Whole whole;
    private int killed;
    private int hits;
    private int temporaryThere;
    private int cleaned;

    KilledRuns(Path root, Launched launched, KilledCommand command, Duration most) throws IOException {
        this.root = root;
        this.launched = launched;
        this.command = command;
        this.endNs = System.nanoTime() + most.toNanos();
        this.demo = command.demo();
    }

    /** Measures one run that nobody kills, and keeps its result to compare others with. */
    void measure() throws IOException, InterruptedException {
        Path book = fresh("measured");
        long startNs = System.nanoTime();
        Process run = launched.command(command.words(book)).start();
        await(run, book, From.TEMPORARY);
        long seenNs = System.nanoTime();
        await(run, book, From.FIRST_BYTE);
        long firstNs = System.nanoTime();
        while (run.isAlive() && !isRenamed(book)) {
            LockSupport.parkNanos(LOOK_NS);
        }
        firstByteNs = System.nanoTime() - firstNs;
        finish(run);
        wholeNs = System.nanoTime() - startNs;
        writingNs = System.nanoTime() - seenNs;
        if (run.exitValue() != 0) {
            throw new IllegalStateException(command.label() + " ends with " + run.exitValue());
        }
        byte[] cells = command == KilledCommand.PLAN ? demo : Files.readAllBytes(book);
        whole = new Aftermath.Whole(cells, command.sheet());
    }

    private static boolean isRenamed(Path book) throws IOException {
        Aftermath seen = Aftermath.of(book, new byte[0]);
        return !seen.backups().isEmpty() && seen.leftovers().isEmpty();
    }

    /** How many runs were killed while the book was the old one and the temporary file had content. */
    int hits() {
        return hits;
    }

    /** Kills so many runs, or as many as the time allows, at moments spread over what follows {@code from}. */
    FaultRow kill(From from, int kills) throws IOException, InterruptedException {
        FaultRow row = new FaultRow(command.label() + " killed (SIGKILL), " + from.words);
        hits = 0;
        temporaryThere = 0;
        cleaned = 0;
        for (int index = 0; index < kills; index++) {
            if (System.nanoTime() - endNs > 0) {
                break;
            }
            double part = (offset + killed * GOLDEN) % 1;
            one(row, from, part);
            System.out.println(command + " " + from + " " + (index + 1) + "/" + kills + " "
                    + row.outcomes().get(index) + " lost " + row.losses().size());
        }
        return row.note(hits + " fell between the first byte and the rename; a temporary file was left after "
                + temporaryThere + " of them, and the next run removed it" + " after " + cleaned);
    }

    private void one(FaultRow row, From from, double part) throws IOException, InterruptedException {
        Path book = fresh(from.name() + killed++);
        Process run = launched.command(command.words(book)).start();
        await(run, book, from);
        waitNs(run, (long) (part * spanNs(from)));
        boolean ended = !run.isAlive();
        run.destroyForcibly();
        finish(run);
        Aftermath after = Aftermath.of(book, demo, whole);
        List<String> losses = new ArrayList<>(after.losses());
        boolean hit = after.isOld() && after.hasFirstByte();
        hits += hit ? 1 : 0;
        if (from == From.FIRST_BYTE) {
            firstByteNs = (long) (firstByteNs * (hit ? LATER : EARLIER));
        }
        String state = after.isOld() ? (after.backups().isEmpty() ? "old book" : "old book and backup") : "new book";
        if (!after.leftovers().isEmpty()) {
            temporaryThere++;
            losses.addAll(cleanedUp(book, after));
        }
        row.tried(ended ? "ran to the end" : state, losses);
    }

    private long spanNs(From from) {
        return switch (from) {
            case START -> wholeNs;
            case TEMPORARY -> writingNs;
            case FIRST_BYTE -> firstByteNs;
            case SECOND_FILE -> RENAMING_NS;
        };
    }

    /** The next run, an hour and more later as the leftover's own time says, removes it and does its work. */
    private List<String> cleanedUp(Path book, Aftermath after) throws IOException {
        FileTime longAgo = FileTime.from(Instant.now().minus(Duration.ofHours(2)));
        for (Path leftover : after.leftovers()) {
            Files.setLastModifiedTime(leftover, longAgo);
        }
        Terminal next = Terminal.run(command.words(book).toArray());
        Aftermath later = Aftermath.of(book, demo, whole);
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
