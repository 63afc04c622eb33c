package org.bagwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.bagwright.cli.json.CompareJson;
import org.bagwright.cli.text.CompareText;
import org.bagwright.cli.text.KeptText;
import org.bagwright.cli.text.MessageText;
import org.bagwright.cli.text.ProgressLine;
import org.bagwright.domain.compare.Comparison;
import org.bagwright.planning.Comparing;
import org.bagwright.planning.Planning;
import org.bagwright.planning.Target;
import org.bagwright.planning.WorkbookProblems;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code compare FILE...}: several books, or one at several times, golfer by golfer. */
@Command(
        name = "compare",
        description = "Plan several books and show their golfers side by side: set-up, carries, speeds, wishes, "
                + "points by measure and the plan. The books are not changed.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  bagwright compare may.xlsx june.xlsx                before and after in time",
            "  bagwright compare a.xlsx b.xlsx c.xlsx -o all.xlsx  writes a sheet Compare",
            "  bagwright compare may.xlsx june.xlsx --json         for another program"
        })
final class CompareCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", arity = "2..*", description = "two or more books, .xlsx or .xlsm files")
    private List<Path> files;

    @Option(
            names = "-o",
            paramLabel = "OUT",
            description = "write a book with the sheets Compare and Side by side, an .xlsx file")
    private Path out;

    @Mixin
    private SearchOptions search;

    @Mixin
    private JsonOption json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        search.check();
        Map<String, Path> books = named();
        checkTarget();
        Planning planning = search.planning();
        Interrupt interrupt = new Interrupt(planning);
        try (ProgressLine progress =
                ProgressLine.start(spec.commandLine().getErr()).follow(planning)) {
            Comparison comparison = new Comparing(planning).compare(books);
            progress.clear();
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
            new MessageText(messages).problems().forEach(line -> err.println("  " + line));
        });
        return Main.WRONG_WORKBOOK;
    }

    /** The files by the shortest names that tell them apart: the file's name, or the whole path. */
    private Map<String, Path> named() throws WrongArguments, IOException {
        Map<String, Path> books = new LinkedHashMap<>();
        for (Path file : files) {
            for (Path other : books.values()) {
                if (new NamedFile(file).isSame(other)) {
                    throw new WrongArguments("The book " + file + " is given twice. Give different books.");
                }
            }
            String name = new NamedFile(file).name();
            long alike = files.stream()
                    .filter(other -> new NamedFile(other).name().equals(name))
                    .count();
            books.put(alike > 1 ? file.toString() : name, file);
        }
        return books;
    }

    private void checkTarget() throws WrongArguments, WorkbookProblems, IOException {
        if (out == null) {
            return;
        }
        for (Path file : files) {
            if (new NamedFile(out).isSame(file)) {
                throw new WrongArguments("The result would replace the book " + file + ". Give -o another name.");
            }
        }
        new NamedFile(out).requireFile("compare.xlsx");
        if (!new NamedFile(out).ending().equalsIgnoreCase(".xlsx")) {
            throw new WrongArguments("The result is an .xlsx book: let " + out + " end in .xlsx");
        }
        new Target(out).requireWritable();
    }

    private void tell(Comparison comparison) throws WorkbookProblems, IOException {
        PrintWriter err = spec.commandLine().getErr();
        PrintWriter people = json.people(spec.commandLine());
        json.print(spec.commandLine(), () -> new CompareJson(comparison).document());
        new CompareText(comparison).lines().forEach(people::println);
        if (out != null) {
            Comparing.write(comparison, out)
                    .map(kept -> new KeptText(kept).line())
                    .ifPresent(people::println);
            people.println("Result: " + out + " (the sheets Compare and Side by side)");
        }
        comparison.books().forEach(book -> new MessageText(book.result().messages())
                .decisive("bagwright check " + book.name())
                .forEach(line -> err.println(book.name() + ": " + line)));
    }
}
