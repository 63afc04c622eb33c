package org.bagwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.bagwright.domain.Comparison;
import org.bagwright.planning.Comparing;
import org.bagwright.planning.Planning;
import org.bagwright.planning.Target;
import org.bagwright.planning.WorkbookProblems;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code compare FILE...}: several books, or one at several times, golfer by golfer. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description =
                "Plan several books and show each golfer of them side by side: gaps, penalty by measure, changes, "
                        + "and what is set otherwise. The books are not written to.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  bagwright compare may.xlsx june.xlsx                    before and after in time",
            "  bagwright compare a.xlsx b.xlsx c.xlsx -o all.xlsx      writes a book with a sheet Compare",
            "  bagwright compare may.xlsx june.xlsx --json             for another program"
        })
final class CompareCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", arity = "2..*", description = "two or more books, .xlsx or .xlsm files")
    private List<Path> files;

    @Option(names = "-o", paramLabel = "OUT", description = "write a book with a sheet Compare, an .xlsx file")
    private Path out;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "20",
            description = "the most time the search may take for each book (default: ${DEFAULT-VALUE})")
    private double seconds;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "the seed of the search, the same for every book (default: ${DEFAULT-VALUE})")
    private long seed;

    @Option(names = "--json", description = "print one JSON document instead of text")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PlanCommand.checkSeconds(seconds);
        Map<String, Path> books = named();
        checkTarget();
        Planning planning = new Planning(seed, seconds);
        Interrupt interrupt = new Interrupt(planning);
        try {
            Comparison comparison = Comparing.compare(planning, books);
            tell(comparison);
            return comparison.books().stream().anyMatch(book -> book.result().plannedBreaks() > 0)
                    ? Main.MUSTS_NOT_MET
                    : Main.DONE;
        } catch (Comparing.SeveralProblems wrong) {
            return tell(wrong);
        } finally {
            interrupt.close();
        }
    }

    private int tell(Comparing.SeveralProblems wrong) {
        PrintWriter err = spec.commandLine().getErr();
        wrong.messages().forEach((name, messages) -> {
            err.println(name + ":");
            MessageText.problems(messages).forEach(line -> err.println("  " + line));
        });
        return Main.WRONG_WORKBOOK;
    }

    /** The files by the shortest names that tell them apart: the file's name, or the whole path. */
    private Map<String, Path> named() throws WrongArguments, IOException {
        Map<String, Path> books = new LinkedHashMap<>();
        for (Path file : files) {
            for (Path other : books.values()) {
                if (isSame(file, other)) {
                    throw new WrongArguments("The book " + file + " is given twice. Give different books.");
                }
            }
            long alike = files.stream()
                    .filter(other -> fileName(other).equals(fileName(file)))
                    .count();
            books.put(alike > 1 ? file.toString() : fileName(file), file);
        }
        return books;
    }

    private static String fileName(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static boolean isSame(Path one, Path other) throws IOException {
        return one.equals(other) || (Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other));
    }

    private void checkTarget() throws WrongArguments, WorkbookProblems, IOException {
        if (out == null) {
            return;
        }
        for (Path file : files) {
            if (isSame(out, file)) {
                throw new WrongArguments("The result would replace the book " + file + ". Give -o another name.");
            }
        }
        if (!PlanCommand.ending(out).equalsIgnoreCase(".xlsx")) {
            throw new WrongArguments("The result is an .xlsx book: let " + out + " end in .xlsx");
        }
        PlanCommand.requirePlace(out);
        Target.requireWritable(out);
    }

    private void tell(Comparison comparison) throws WorkbookProblems, IOException {
        PrintWriter err = spec.commandLine().getErr();
        PrintWriter people = json ? err : spec.commandLine().getOut();
        if (json) {
            spec.commandLine().getOut().println(Json.text(CompareJson.of(comparison)));
        }
        new CompareText(comparison).lines().forEach(people::println);
        if (out != null) {
            Comparing.write(comparison, out).map(KeptText::line).ifPresent(people::println);
            people.println("Result: " + out + " (the sheet Compare)");
        }
        comparison.books().forEach(book -> MessageText.briefNotes(book.result().messages())
                .forEach(line -> err.println(book.name() + ": " + line)));
    }
}
