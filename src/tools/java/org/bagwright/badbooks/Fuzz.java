package org.bagwright.badbooks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/**
 * Spoils valid books at random and runs the commands on them. Each try depends on the seed and its own number only, so one
 * alone can be run again: {@code seed=1 from=4711 tries=1}.
 */
public final class Fuzz {
    /** Time on the processor, so that other work on the machine does not count. */
    private static final double MOST_CPU_S = 10;

    /** On a busy machine a second on the processor may take a minute. */
    private static final long MOST_WAIT_S = 600;

    private static final int REPORT_EVERY = 100;

    private final long seed;
    private final Map<String, Integer> commands = new TreeMap<>();
    private Optional<Path> keep = Optional.empty();
    private int sound;
    private double mostCpuS;

    Fuzz(long seed) {
        this.seed = seed;
    }

    /** Arguments: {@code seed=1 from=0 tries=20000 keep=FOLDER}; the files of a fault go to that folder. */
    public static void main(String[] args) throws IOException {
        List<String> faults = new ArrayList<>();
        Fuzz fuzz = new Fuzz(argument(args, "seed", 1));
        fuzz.keep = Stream.of(args)
                .filter(text -> text.startsWith("keep="))
                .map(text -> Path.of(text.substring("keep=".length())))
                .findFirst();
        int from = argument(args, "from", 0);
        int tries = argument(args, "tries", 20_000);
        for (int done = 0; done < tries; done += REPORT_EVERY) {
            List<String> found = fuzz.run(from + done, Math.min(REPORT_EVERY, tries - done));
            found.forEach(System.out::println);
            faults.addAll(found);
            System.out.printf(
                    Locale.ROOT,
                    "%d tries, %d books still valid, on valid books %s, %d faults, longest %.1f s%n",
                    Math.min(tries, done + REPORT_EVERY),
                    fuzz.sound,
                    fuzz.commands,
                    faults.size(),
                    fuzz.mostCpuS);
        }
        System.exit(faults.isEmpty() ? 0 : 1);
    }

    private static int argument(String[] args, String name, int usual) {
        return Stream.of(args)
                .filter(text -> text.startsWith(name + "=") && text.length() > name.length() + 1)
                .map(text -> Integer.parseInt(text.substring(name.length() + 1)))
                .findFirst()
                .orElse(usual);
    }

    int sound() {
        return sound;
    }

    /** How often each command was run on a valid book. */
    Map<String, Integer> commands() {
        return Map.copyOf(commands);
    }

    /** Every fault of some tries, with what is needed to see it again. */
    List<String> run(int from, int tries) throws IOException {
        Path folder = Files.createTempDirectory("bagwright-fuzz");
        ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, "try");
            thread.setDaemon(true);
            return thread;
        });
        List<String> faults = new ArrayList<>();
        try {
            FuzzBooks books = new FuzzBooks(folder);
            for (int number = from; number < from + tries; number++) {
                one(books, folder, worker, number, faults);
            }
        } finally {
            worker.shutdownNow();
            remove(folder);
        }
        return faults;
    }

    private void one(FuzzBooks books, Path folder, ExecutorService worker, int number, List<String> faults)
            throws IOException {
        int before = faults.size();
        Random random = new Random(seed * 1_000_003 + number);
        List<String> changes = new CopyOnWriteArrayList<>();
        Callable<FuzzTry.Outcome> task = () -> FuzzTry.run(books, random, folder, changes);
        Future<FuzzTry.Outcome> running = worker.submit(task);
        String where = "seed=" + seed + " from=" + number + " tries=1: ";
        try {
            FuzzTry.Outcome outcome = running.get(MOST_WAIT_S, TimeUnit.SECONDS);
            if (outcome.sound()) {
                sound++;
                commands.merge(outcome.command(), 1, Integer::sum);
            }
            mostCpuS = Math.max(mostCpuS, outcome.cpuS());
            if (outcome.cpuS() > MOST_CPU_S) {
                faults.add(where + changes + "\n    took " + outcome.cpuS() + " s");
            }
            if (!outcome.fault().isEmpty()) {
                faults.add(where + changes + "\n    " + outcome.fault());
            }
        } catch (TimeoutException hung) {
            faults.add(where + changes + "\n    more than " + MOST_WAIT_S + " s, now at " + place());
            finish(running);
        } catch (ExecutionException thrown) {
            faults.add(where + changes + "\n    threw " + thrown.getCause() + " at "
                    + List.of(thrown.getCause().getStackTrace()).stream()
                            .limit(8)
                            .toList());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        if (faults.size() > before && keep.isPresent()) {
            keep(folder, keep.get().resolve(seed + "-" + number));
        }
        clear(folder);
    }

    private static void keep(Path folder, Path kept) throws IOException {
        Files.createDirectories(kept);
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.copy(file, kept.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    private static void finish(Future<?> running) {
        try {
            running.get(60, TimeUnit.SECONDS);
        } catch (InterruptedException | ExecutionException | TimeoutException still) {
            running.cancel(true);
        }
    }

    private static String place() {
        return Thread.getAllStackTraces().entrySet().stream()
                .filter(entry -> entry.getKey().getName().equals("try"))
                .map(entry -> Stream.of(entry.getValue()).limit(25).toList().toString())
                .findFirst()
                .orElse("?");
    }

    private static void clear(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static void remove(Path folder) throws IOException {
        clear(folder);
        Files.delete(folder);
    }
}
