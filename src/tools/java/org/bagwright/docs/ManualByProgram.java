package org.bagwright.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bagwright.cli.text.Terminal;

/** Does the first chapter of the manual with a program that is started as a reader starts it, without any variables. */
public final class ManualByProgram {
    private final Path program;
    private final Path folder;

    private ManualByProgram(Path program, Path folder) {
        this.program = program;
        this.folder = folder;
    }

    /** Arguments: the program and an empty folder, both in full. It fails if anything is not as the chapter says. */
    public static void main(String[] args) throws IOException {
        ManualByProgram by = new ManualByProgram(Path.of(args[0]), Path.of(args[1]));
        ManualChapter chapter = ManualChapter.all().get(0);
        ManualChapter made = chapter.withOutput(new ManualRun(by.folder, by::run)::output);
        if (!made.text().equals(chapter.text())) {
            throw new AssertionError("the program prints other lines than the chapter:\n" + made.text());
        }
        System.out.println(chapter.deeds().size() + " steps of " + chapter.name() + " done as it says.");
    }

    private Terminal run(List<Object> arguments) {
        List<String> words = new ArrayList<>(List.of(program.toString()));
        arguments.forEach(argument -> words.add(argument.toString()));
        try {
            Path err = Files.createTempFile("manual", ".err");
            ProcessBuilder builder =
                    new ProcessBuilder(words).directory(folder.toFile()).redirectError(err.toFile());
            builder.environment().clear();
            Process process = builder.start();
            String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            Terminal run = new Terminal(process.waitFor(), out, Files.readString(err));
            Files.delete(err);
            return run;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }
}
