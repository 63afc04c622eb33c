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
    private static final int TWO_AT_ONCE = 5;

    private FaultTable() {}

    /** Takes how many runs to kill, the most minutes for that, and the page to write; without a page it only prints. */
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

    /** The kinds of kills run at the same time, each in folders of its own. */
    private static List<FaultRow> rows(Path root, int kills, Duration most) throws IOException, InterruptedException {
        Launched launched = new Launched(root);
        int part = kills * 3 / 10;
        List<Callable<List<FaultRow>>> kinds = List.of(
                () -> List.of(killed(root, launched, KilledRuns.From.START, most, kills - 2 * part)),
                () -> List.of(killed(root, launched, KilledRuns.From.TEMPORARY, most, part)),
                () -> List.of(killed(root, launched, KilledRuns.From.SECOND_FILE, most, part)),
                () -> others(root, launched));
        ExecutorService threads = Executors.newFixedThreadPool(kinds.size());
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

    private static FaultRow killed(Path root, Launched launched, KilledRuns.From from, Duration most, int kills)
            throws IOException, InterruptedException {
        KilledRuns runs = new KilledRuns(Files.createDirectories(root.resolve(from.name())), launched, most);
        runs.measure();
        return runs.kill(from, kills);
    }

    private static List<FaultRow> others(Path root, Launched launched) throws IOException, InterruptedException {
        Path folder = Files.createDirectories(root.resolve("others"));
        PlaceFaults places = new PlaceFaults(folder);
        List<FaultRow> rows = new ArrayList<>(places.all());
        rows.addAll(new DiskFaults(folder).all(FULL_DISKS));
        rows.add(places.twoAtOnce(launched, TWO_AT_ONCE));
        return rows;
    }

    private static String page(List<FaultRow> rows) {
        StringBuilder page = new StringBuilder(
                """
                # Faults while writing

                Made by `FaultTable`, which tries each fault on the demo book trio and then looks into the folder. **Lost** is any try after which the book is neither the old one, byte for byte, nor a whole
                new one (opens, has the sheet Plan, every input cell as it was); a backup is halved; the old book stands
                nowhere; a stray file is there that the next run does not remove; or the exit code or the message is wrong.

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

                What this cannot show: a power cut (the content is forced to the disk before the renaming, and the folder
                after it, but no test here cuts the power); a disk that fills up in the renaming itself, which needs no
                room on the disks tried; file locks of Windows, whose faults are only tried as messages in
                `SafeFileFaultsTest`. A folder without the right to write does not hold root back, so a disk mounted read-only
                stands in for it.
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
