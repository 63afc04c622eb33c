package org.bagwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Whole runs of the launcher: wall time and, on Linux, peak memory. */
public final class WholeProcess {
    private static final int RUNS = 7;

    private WholeProcess() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("bagwright-bench");
        Path book = Path.of("demo-data", "full.xlsx");
        measure("--help", List.of("--help"));
        measure("check", List.of("check", book.toString()));
        measure("chart", List.of("chart", book.toString()));
        measure(
                "plan",
                List.of(
                        "plan",
                        book.toString(),
                        "-o",
                        folder.resolve("planned.xlsx").toString()));
        measure("demo", List.of("demo", "-o", folder.toString()));
    }

    private static void measure(String name, List<String> command) throws IOException, InterruptedException {
        double[] seconds = new double[RUNS];
        long peakKiB = 0;
        for (int run = 0; run < RUNS; run++) {
            List<String> line = new ArrayList<>(List.of("./bagwright"));
            line.addAll(command);
            long startNs = System.nanoTime();
            Process process = new ProcessBuilder(line)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            while (process.isAlive()) {
                peakKiB = Math.max(peakKiB, peakKiB(process.pid()));
                Thread.sleep(10);
            }
            seconds[run] = (System.nanoTime() - startNs) / 1e9;
        }
        Arrays.sort(seconds);
        System.out.printf(
                "%-8s median %.2f s, best %.2f s, worst %.2f s, peak memory %d MiB%n",
                name, seconds[RUNS / 2], seconds[0], seconds[RUNS - 1], peakKiB / 1024);
    }

    private static long peakKiB(long pid) {
        try {
            return Files.readAllLines(Path.of("/proc", String.valueOf(pid), "status")).stream()
                    .filter(line -> line.startsWith("VmHWM"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")))
                    .findFirst()
                    .orElse(0);
        } catch (IOException gone) {
            return 0;
        }
    }
}
