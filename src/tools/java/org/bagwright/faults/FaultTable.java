package org.bagwright.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;

/** Tries every fault in turn and writes the table of them. */
public final class FaultTable {
    private static final int FULL_DISKS = 8;
    private static final int TRIES_AT_ONCE = 5;
    private static final int AT_ONCE = 2;

    private FaultTable() {}

    /**
     * Takes how many runs of each command to kill, the most minutes for that, and the page to write; without a page it only
     * prints.
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        int kills = Integer.parseInt(args[0]);
        Path root = Files.createTempDirectory("bagwright-faults");
        List<FaultRow> rows;
        try {
            rows = rows(root, kills, Duration.ofMinutes(Long.parseLong(args[1])));
        } finally {
            remove(root);
        }
        String page = page(rows);
        System.out.println(page);
        if (args.length > 2 && !args[2].isBlank()) {
            Files.writeString(Path.of(args[2]), page);
        }
        System.exit(rows.stream().allMatch(row -> row.losses().isEmpty()) ? 0 : 1);
    }

    private static List<FaultRow> rows(Path root, int kills, Duration most) throws IOException, InterruptedException {
        Launched launched = new Launched(root);
        List<Callable<List<FaultRow>>> kinds = List.of(
                () -> killed(root, launched, KilledCommand.PLAN, most, kills),
                () -> killed(root, launched, KilledCommand.ADD_SHOTS, most, kills),
                () -> killed(root, launched, KilledCommand.GAUGE, most, kills),
                () -> others(root, launched));
        ExecutorService threads = Executors.newFixedThreadPool(AT_ONCE);
        List<FaultRow> rows = new ArrayList<>();
        for (Future<List<FaultRow>> kind : threads.invokeAll(kinds)) {
            try {
                rows.addAll(kind.get());
            } catch (ExecutionException failed) {
                throw new IOException(failed.getCause());
            }
        }
        threads.shutdown();
        return rows;
    }

    /** Seven of ten kills wait for the first byte, the others for each of the other moments. */
    private static List<FaultRow> killed(Path root, Launched launched, KilledCommand command, Duration most, int kills)
            throws IOException, InterruptedException {
        KilledRuns runs =
                new KilledRuns(Files.createDirectories(root.resolve(command.name())), launched, command, most);
        runs.measure();
        int part = kills / 10;
        return List.of(
                runs.kill(KilledRuns.From.FIRST_BYTE, kills - 3 * part),
                runs.kill(KilledRuns.From.START, part),
                runs.kill(KilledRuns.From.TEMPORARY, part),
                runs.kill(KilledRuns.From.SECOND_FILE, part));
    }

    private static List<FaultRow> others(Path root, Launched launched) throws IOException, InterruptedException {
        Path folder = Files.createDirectories(root.resolve("others"));
        PlaceFaults places = new PlaceFaults(folder);
        List<FaultRow> rows = new ArrayList<>(places.all());
        rows.addAll(new DiskFaults(folder).all(FULL_DISKS));
        rows.add(places.atOnce(launched, 2, TRIES_AT_ONCE));
        rows.add(places.atOnce(launched, 3, TRIES_AT_ONCE));
        return rows;
    }

    private static String page(List<FaultRow> rows) {
        StringBuilder page = new StringBuilder(
                """
                # Faults while writing

                `FaultTable` makes this page. It tries each fault on the demo book trio,
                for gauge with two readings added, and then checks the folder. A try counts as **lost** if the book is neither the old one, byte for byte,
                nor a whole new one (it opens, has the sheet Plan, and every input cell is unchanged; after add-shots and gauge
                every cell is as after a run that was not killed). It also counts
                if a backup is incomplete, if no file holds the old book, if a stray file stays that the next run does
                not remove, or if the exit code or the message is wrong.

                | fault | tries | what came of it | lost |
                |---|---|---|---|
                """);
        rows.forEach(row -> page.append(row.line()).append('\n'));
        int tries = rows.stream().mapToInt(FaultRow::tries).sum();
        int lost = rows.stream().mapToInt(row -> row.losses().size()).sum();
        page.append("\n").append(tries).append(" tries, ").append(lost).append(" lost.\n");
        rows.forEach(row -> row.losses()
                .forEach(loss -> page.append("\nLost: ").append(loss).append('\n')));
        return page.append(
                        """

                This page does not cover:

                - a power cut: the program forces the content to the disk before it renames the file, and the folder
                  afterwards, but no test here cuts the power;
                - a disk that fills up while the file is renamed: on the disks tried, the rename needs no space;
                - file locks of Windows: `SafeFileFaultsTest` tries them as messages only.

                Root may write to a folder without write permission, so a disk that is mounted read-only takes its
                place.
                """)
                .toString();
    }

    private static void remove(Path root) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
