package org.bagwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.bagwright.domain.BookResult;
import org.bagwright.domain.Numbers;
import org.bagwright.planning.BookFiles;
import org.bagwright.planning.Meant;
import org.bagwright.planning.Planning;
import org.bagwright.planning.WorkProgress;
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
        List<String> names = name == null ? BookFiles.demoNames() : List.of(known(name));
        for (String demo : names) {
            run(demo);
        }
        return Main.DONE;
    }

    private static String known(String name) throws WrongArguments {
        if (!BookFiles.demoNames().contains(name)) {
            throw new WrongArguments("There is no demo called " + name + "." + Meant.maybe(name, BookFiles.demoNames())
                    + " There are: " + String.join(", ", BookFiles.demoNames()) + ".");
        }
        return name;
    }

    /** A plan and what was written of it. */
    private record Planned(BookResult result, Planning.Written written) {}

    private Planned plan(Path book, Path target) throws Exception {
        Planning planning = new Planning(1, 20);
        try (ProgressLine progress =
                ProgressLine.start(spec.commandLine().getErr(), "").follow(planning)) {
            BookResult result = planning.plan(book);
            progress.at(WorkProgress.Stage.WRITING, 0, 0);
            return new Planned(result, Planning.write(book, result, List.of(), target));
        }
    }

    private void run(String demo) throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        long startNs = System.nanoTime();
        Path book = BookFiles.demo(demo, folder);
        Path target = Targets.besides(book, Targets.PLAN);
        Planned planned = plan(book, target);
        BookResult result = planned.result();
        double allS = (System.nanoTime() - startNs) / 1e9;
        out.println("Demo " + demo + " (invented): " + BookFiles.demoShows(demo));
        if (name == null) {
            out.println("  " + PlanText.summary(result) + ", " + Numbers.fixed(allS, 1) + " s");
            out.println("  open " + target + ", sheet Plan");
        } else {
            out.println("Result: " + target + " (open the sheet Plan)");
            out.println("Book:   " + book);
            out.println();
            new PlanText(result).lines().forEach(out::println);
        }
        planned.written().backup().map(KeptText::line).ifPresent(line -> out.println("  " + line));
        out.flush();
    }
}
