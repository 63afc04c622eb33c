package org.bagwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.bagwright.cli.json.PlanJson;
import org.bagwright.cli.text.KeptText;
import org.bagwright.cli.text.LiveText;
import org.bagwright.cli.text.MessageText;
import org.bagwright.cli.text.PlanText;
import org.bagwright.cli.text.ProgressLine;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.WorkProgress;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.Charting;
import org.bagwright.planning.Planning;
import org.bagwright.planning.Target;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code plan FILE}: the best settings and bends, written into a copy of the book. */
@Command(
        name = "plan",
        description = "Find the best settings and bends for every bag of a book and write them, with live sheets, "
                + "into a copy of it.",
        footerHeading = "%n" + KeptText.RULE + "%n%nExamples:%n",
        footer = {
            "  bagwright plan bag.xlsx                 writes bag-plan.xlsx",
            "  bagwright plan bag.xlsx -o june.xlsx    writes june.xlsx",
            "  bagwright plan bag.xlsx --in-place      writes into bag.xlsx after a backup",
            "  bagwright plan bag-plan.xlsx --from-live -o next.xlsx",
            "                                          starts from its live choices"
        })
final class PlanCommand implements Callable<Integer> {
    @Mixin
    private BookArgument book;

    @Mixin
    private TargetOptions target;

    @Mixin
    private SearchOptions search;

    @Option(
            names = "--from-live",
            description = "use the live choices on the sheet Plan of an earlier run as today's set-up: changes count "
                    + "from there, and the result's sheet Clubs holds them")
    private boolean fromLive;

    @Mixin
    private JsonOption json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        search.check();
        Path copy = target.target(book.file(), NamedFile.PLAN);
        Planning planning = search.planning();
        Interrupt interrupt = new Interrupt(planning);
        try (ProgressLine progress =
                ProgressLine.start(spec.commandLine().getErr()).follow(planning)) {
            Planned planned = new SavedMeanwhile(book.file(), spec.commandLine().getErr())
                    .repeat(source -> planned(source, planning, progress, copy));
            progress.clear();
            tell(planning, planned.result(), copy, planned.written());
            return planned.result().plannedBreaks() > 0 ? Main.MUSTS_NOT_MET : Main.DONE;
        } finally {
            interrupt.close();
        }
    }

    /** A plan and what was written of it. */
    private record Planned(BookResult result, Planning.Written written) {}

    private Planned planned(SourceFile source, Planning planning, WorkProgress progress, Path copy) throws Exception {
        Charting.FromLive start = start(source, progress);
        new Target(copy).requireWritable();
        BookResult result = planning.plan(start.charted());
        progress.at(WorkProgress.Stage.WRITING, 0, 0);
        return new Planned(result, Planning.write(source, result, start.changes(), copy));
    }

    /** The book as it is, or with its live choices in the place of today's set-up. */
    private Charting.FromLive start(SourceFile source, WorkProgress progress) throws Exception {
        if (!fromLive) {
            return new Charting.FromLive(new Charting(source, progress).forPlan(), List.of());
        }
        return new Charting(source, progress)
                .fromLive()
                .orElseThrow(() -> new WrongArguments("--from-live needs live choices, and " + book.file()
                        + " has no sheet Plan of an earlier run. Plan it first, choose on the sheet Plan of the"
                        + " result, then give that result here."));
    }

    private void tell(Planning planning, BookResult result, Path copy, Planning.Written written) {
        PrintWriter err = spec.commandLine().getErr();
        PrintWriter people = json.people(spec.commandLine());
        json.print(spec.commandLine(), () -> new PlanJson(result).document());
        new PlanText(result).lines().forEach(people::println);
        people.println("Result: " + copy + " (open the sheet Plan)");
        written.backup().map(kept -> new KeptText(kept).line()).ifPresent(people::println);
        LiveText taken = new LiveText(written);
        taken.wishes().forEach(people::println);
        if (fromLive) {
            taken.lines().forEach(people::println);
        }
        new MessageText(written.notWritten()).notes().forEach(err::println);
        if (planning.cappedByTime()) {
            people.println("The search ended early; with more --seconds it may find a better plan.");
        }
        new PlanText(result).measureNext().ifPresent(people::println);
        new MessageText(result.messages()).decisive("sheet Messages").forEach(err::println);
    }
}
