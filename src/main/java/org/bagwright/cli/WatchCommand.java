package org.bagwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.bagwright.cli.text.AnsiStyle;
import org.bagwright.cli.text.FaultText;
import org.bagwright.cli.text.ProgressLine;
import org.bagwright.cli.text.WatchText;
import org.bagwright.files.FileWatch;
import org.bagwright.planning.Charting;
import org.bagwright.planning.PlanTarget;
import org.bagwright.planning.Planning;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code watch FILE}: plans a book again each time it is saved. */
@Command(
        name = "watch",
        description = {
            "Plan a book now, and again each time you save it: type, save, look.",
            "Keep the book open in your spreadsheet program, and reopen the result to see the latest plan. If the"
                    + " book has problems, watch lists them and waits for the next save. Ctrl-C ends it (exit code"
                    + " 130); a file that is being written is finished first."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  bagwright watch bag.xlsx                 writes bag-plan.xlsx after each save",
            "  bagwright watch bag.xlsx -o try.xlsx     writes try.xlsx",
            "  bagwright watch bag.xlsx --seconds 5     for big books: a good plan soon"
        })
final class WatchCommand implements Callable<Integer> {
    @Mixin
    private BookArgument book;

    @Option(names = "-o", paramLabel = "OUT", description = "where the result goes (default: FILE-plan)")
    private Path out;

    @Mixin
    private SearchOptions search;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        search.check();
        Path file = book.file();
        if (!Files.isRegularFile(file)) {
            new Charting(file).chart();
        }
        PlanTarget target = new PlanTarget(new NamedFile(file).copy(out, NamedFile.PLAN));
        Planning planning = search.planning();
        PrintWriter lines = spec.commandLine().getOut();
        lines.println("Watching " + file + ": each time you save it, the plan goes to " + target.file()
                + ". Ctrl-C ends this.");
        try (ProgressLine progress =
                        ProgressLine.start(spec.commandLine().getErr(), "").follow(planning);
                FileWatch watch = new FileWatch(file, FileWatch.Pace.USUAL)) {
            WatchLoop loop = new WatchLoop(
                    planning, watch, target, new WatchText(lines, progress, AnsiStyle.of(spec.commandLine())));
            Runtime.getRuntime().addShutdownHook(new Thread(() -> end(loop, watch)));
            loop.run();
        }
        return Main.DONE;
    }

    private static void end(WatchLoop loop, FileWatch watch) {
        loop.stop();
        try {
            watch.close();
        } catch (IOException stays) {
            System.err.println("bagwright: " + new FaultText(stays).sentence());
        }
    }
}
