package org.bagwright.faults;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.spi.ToolProvider;

/** Starts the program as the launcher does: a jar, one compiler tier, and an archive of loaded classes. */
final class Launched {
    private final List<String> start;

    /** Packs the classes that this process runs on and makes the archive by a first run. */
    Launched(Path folder) throws IOException, InterruptedException {
        Path jar = folder.resolve("bagwright.jar");
        List<String> places =
                Arrays.asList(System.getProperty("java.class.path").split(File.pathSeparator));
        String classes = places.stream()
                .filter(place -> Files.exists(Path.of(place, "org", "bagwright", "cli", "Main.class")))
                .findFirst()
                .orElseThrow();
        ToolProvider.findFirst("jar")
                .orElseThrow()
                .run(System.out, System.err, "--create", "--file", jar.toString(), "-C", classes, ".");
        List<String> path = new ArrayList<>(List.of(jar.toString()));
        places.stream().filter(place -> place.endsWith(".jar")).forEach(path::add);
        Path archive = folder.resolve("bagwright.jsa");
        start = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-Xlog:disable",
                "-XX:SharedArchiveFile=" + archive,
                "-cp",
                String.join(File.pathSeparator, path),
                "org.bagwright.cli.Main");
        makeArchive(archive, folder);
    }

    private void makeArchive(Path archive, Path folder) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(start);
        line.set(5, "-XX:ArchiveClassesAtExit=" + archive);
        line.addAll(List.of("demo", "trio", "-o", folder.resolve("first").toString()));
        quiet(line).start().waitFor();
    }

    /** A command, ready to start. */
    ProcessBuilder command(List<String> words) {
        List<String> line = new ArrayList<>(start);
        line.addAll(words);
        return quiet(line);
    }

    private static ProcessBuilder quiet(List<String> line) {
        return new ProcessBuilder(line)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD);
    }
}
