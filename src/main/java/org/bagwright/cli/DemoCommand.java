package org.bagwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.bagwright.cli.text.KeptText;
import org.bagwright.cli.text.PlanText;
import org.bagwright.cli.text.ProgressLine;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.WorkProgress;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.Numbers;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.Planning;
import org.bagwright.planning.ShippedBook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code demo}: plans the invented books that come with the program. */
@Command(
        name = "demo",
        description = "Plan the invented demo books into a folder and say what to open.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  bagwright demo                      plans all: trio, full and team",
            "  bagwright demo trio -o try-out      plans one and shows its plan"
        })
final class DemoCommand implements Callable<Integer> {
    @Parameters(paramLabel = "NAME", arity = "0..1", description = "one demo by name (default: all of them)")
    private String name;

    @Option(
            names = "-o",
            paramLabel = "FOLDER",
            defaultValue = "bagwright-demo",
            description = "the folder for the results, created if needed (default: ${DEFAULT-VALUE})")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        List<ShippedBook> demos = name == null ? ShippedBook.demos() : List.of(known(name));
        for (ShippedBook demo : demos) {
            run(demo);
        }
        return Main.DONE;
    }

    private static ShippedBook known(String name) throws WrongArguments {
        List<String> labels =
                ShippedBook.demos().stream().map(ShippedBook::label).toList();
        return ShippedBook.demo(name)
                .orElseThrow(() -> new WrongArguments("There is no demo called " + name + "."
                        + CloseNames.maybe(name, labels) + " There are: " + String.join(", ", labels) + "."));
    }

    /** A plan and what was written of it. */
    private record Planned(BookResult result, Planning.Written written) {}

    private Planned plan(Path book, Path target) throws Exception {
        Planning planning = new Planning(1, 20);
        try (ProgressLine progress =
                ProgressLine.start(spec.commandLine().getErr(), "").follow(planning)) {
            SourceFile source = new SourceFile(book);
            BookResult result = planning.plan(source);
            progress.at(WorkProgress.Stage.WRITING, 0, 0);
            return new Planned(result, Planning.write(source, result, List.of(), target));
        }
    }

    private void run(ShippedBook demo) throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        long startNs = System.nanoTime();
        Path book = demo.copyInto(folder);
        Path target = new NamedFile(book).nextTo(NamedFile.PLAN).path();
        Planned planned = plan(book, target);
        BookResult result = planned.result();
        double allS = (System.nanoTime() - startNs) / 1e9;
        out.println("Demo " + demo.label() + " (invented): " + demo.shows());
        if (name == null) {
            out.println("  " + PlanText.summary(result) + ", " + Numbers.fixed(allS, 1) + " s");
            out.println("  open " + target + ", sheet Plan");
        } else {
            out.println("Result: " + target + " (open the sheet Plan)");
            out.println("Book:   " + book);
            out.println();
            new PlanText(result).lines().forEach(out::println);
            new PlanText(result).measureNext().ifPresent(out::println);
        }
        planned.written().backup().map(kept -> new KeptText(kept).line()).ifPresent(line -> out.println("  " + line));
        out.flush();
    }
}
