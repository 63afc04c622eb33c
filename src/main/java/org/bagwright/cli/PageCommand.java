package org.bagwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.bagwright.cli.text.KeptText;
import org.bagwright.cli.text.MessageText;
import org.bagwright.cli.text.PlanText;
import org.bagwright.cli.text.ProgressLine;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.WorkProgress;
import org.bagwright.files.KeptFile;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.Charting;
import org.bagwright.planning.Planning;
import org.bagwright.planning.Target;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code page FILE}: the book as planned, as one HTML file to look at and try things out. */
@Command(
        name = "page",
        description =
                "Plan a book and write it as one HTML file: look at the bag, turn sleeves, see what follows. It opens"
                        + " in a browser on any device, without a network.",
        footerHeading = "%n" + KeptText.RULE + "%n%nExamples:%n",
        footer = {
            "  bagwright page bag.xlsx                 writes bag.html",
            "  bagwright page bag.xlsx -o bench.html   writes bench.html"
        })
final class PageCommand implements Callable<Integer> {
    private static final String USUAL_ENDING = ".html";

    @Mixin
    private BookArgument book;

    @Option(
            names = "-o",
            paramLabel = "OUT",
            description = "where the page goes, an .html file (default: next to FILE)")
    private Path out;

    @Mixin
    private SearchOptions search;

    @Spec
    private CommandSpec spec;

    /** A plan and the backup of the page that it replaced. */
    private record Written(BookResult result, Optional<KeptFile> backup) {}

    @Override
    public Integer call() throws Exception {
        search.check();
        Path page = page();
        Planning planning = search.planning();
        Interrupt interrupt = new Interrupt(planning);
        try (ProgressLine progress =
                ProgressLine.start(spec.commandLine().getErr()).follow(planning)) {
            Written written = new SavedMeanwhile(book.file(), spec.commandLine().getErr())
                    .repeat(source -> written(source, planning, progress, page));
            progress.clear();
            tell(written, page, planning.cappedByTime());
            return written.result().plannedBreaks() > 0 ? Main.MUSTS_NOT_MET : Main.DONE;
        } finally {
            interrupt.close();
        }
    }

    private Path page() throws WrongArguments, IOException {
        NamedFile beside = new NamedFile(book.file());
        Path page = out == null ? beside.withEnding(USUAL_ENDING) : out;
        String ending = new NamedFile(page).ending().toLowerCase(Locale.ROOT);
        if (beside.isSame(page)) {
            throw new WrongArguments("The page would replace the book itself. Give -o another name.");
        }
        if (!ending.equals(USUAL_ENDING) && !ending.equals(".htm")) {
            throw new WrongArguments("A page needs the ending of one: let " + page + " end in " + USUAL_ENDING + ".");
        }
        new NamedFile(page)
                .requireFile(beside.withEnding(USUAL_ENDING).getFileName().toString());
        return page;
    }

    private Written written(SourceFile source, Planning planning, WorkProgress progress, Path page) throws Exception {
        BookResult result = planning.plan(new Charting(source, progress).forPlan());
        new Target(page).requireWritable();
        progress.at(WorkProgress.Stage.WRITING, 0, 0);
        return new Written(result, Planning.writePage(source, result, page));
    }

    private void tell(Written written, Path page, boolean cappedByTime) {
        PrintWriter people = spec.commandLine().getOut();
        new PlanText(written.result()).lines().forEach(people::println);
        people.println("Page: " + page + " (open it in a browser; it needs no other file and no network)");
        written.backup().map(kept -> new KeptText(kept).line()).ifPresent(people::println);
        if (cappedByTime) {
            people.println("The search ended early; with more --seconds it may find a better plan.");
        }
        new MessageText(written.result().messages())
                .decisive("sheet Messages of a plan")
                .forEach(spec.commandLine().getErr()::println);
    }
}
