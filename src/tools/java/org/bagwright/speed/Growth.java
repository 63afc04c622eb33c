package org.bagwright.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * How the time of a whole run grows with the golfers of a book and with the options of a bag, as tables for the page of figures.
 * The slope is that of the logarithms from one row to the next: 1 where twice as much takes twice as long. The arguments: a
 * list such as {@code golfers=1,3,10} or {@code options=100,1000}, or both.
 */
public final class Growth {
    private static final int CLUBS = 14;
    private static final long LOOK_MS = 20;

    /** What one run took. */
    private record Cost(double wallS, double processorS, double peakMiB) {}

    private final Path folder;

    private Growth(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("growth-");
        try {
            for (String argument : arguments) {
                String[] parts = argument.split("=", 2);
                int[] sizes = Arrays.stream(parts[1].split(","))
                        .mapToInt(Integer::parseInt)
                        .toArray();
                new Growth(folder).table(parts[0], sizes);
            }
        } finally {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
            }
            Files.delete(folder);
        }
    }

    private void table(String what, int... sizes) throws IOException, InterruptedException {
        System.out.println("| " + what + " | wall, s | slope | processor, s | slope | peak memory, MiB |");
        System.out.println("|---|---|---|---|---|---|");
        Cost before = null;
        for (int row = 0; row < sizes.length; row++) {
            Path book = folder.resolve(what + sizes[row] + ".xlsx");
            (what.equals("golfers") ? LargeBook.ofGolfers(sizes[row], CLUBS) : LargeBook.ofOptions(CLUBS, sizes[row]))
                    .write(book);
            Cost cost = run(book);
            double lnRatio = row == 0 ? Double.NaN : Math.log((double) sizes[row] / sizes[row - 1]);
            System.out.println(String.format(
                    Locale.ROOT,
                    "| %,d | %.1f | %s | %.1f | %s | %.0f |",
                    sizes[row],
                    cost.wallS(),
                    before == null ? "" : slope(cost.wallS() / before.wallS(), lnRatio),
                    cost.processorS(),
                    before == null ? "" : slope(cost.processorS() / before.processorS(), lnRatio),
                    cost.peakMiB()));
            before = cost;
        }
    }

    private static String slope(double ratio, double lnRatio) {
        return String.format(Locale.ROOT, "%.2f", Math.log(ratio) / lnRatio);
    }

    private Cost run(Path book) throws IOException, InterruptedException {
        Path plan = folder.resolve("plan.xlsx");
        Files.deleteIfExists(plan);
        Path said = folder.resolve("said.txt");
        long startNs = System.nanoTime();
        Process process = new ProcessBuilder(List.of("./bagwright", "plan", book.toString(), "-o", plan.toString()))
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        double processorS = 0;
        double peakMiB = 0;
        while (process.isAlive()) {
            processorS = process.info()
                    .totalCpuDuration()
                    .map(spent -> spent.toNanos() / 1e9)
                    .orElse(processorS);
            peakMiB = Math.max(peakMiB, peakMiB(process.pid()));
            Thread.sleep(LOOK_MS);
        }
        double wallS = (System.nanoTime() - startNs) / 1e9;
        if (process.waitFor() != 0 && !Files.exists(plan)) {
            throw new IllegalStateException(Files.readString(said));
        }
        return new Cost(wallS, processorS, peakMiB);
    }

    private static double peakMiB(long pid) {
        try (Stream<String> lines = Files.lines(Path.of("/proc", String.valueOf(pid), "status"))) {
            return lines.filter(line -> line.startsWith("VmHWM"))
                    .mapToDouble(line -> Double.parseDouble(line.replaceAll("[^0-9]", "")) / 1024)
                    .findFirst()
                    .orElse(0);
        } catch (IOException gone) {
            return 0;
        }
    }
}
