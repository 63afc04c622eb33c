package org.bagwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.bagwright.domain.BookResult;
import org.bagwright.planning.Planning;
import org.bagwright.planning.Target;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code plan FILE}: the best settings and bends, written into a copy of the book. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = "Find the best settings and bends for every bag of a book and write them, with live sheets, "
                + "into a copy of it.",
        footerHeading = "%n" + KeptText.RULE + "%n%nExamples:%n",
        footer = {
            "  bagwright plan bag.xlsx                 writes bag-plan.xlsx",
            "  bagwright plan bag.xlsx -o june.xlsx    writes june.xlsx",
            "  bagwright plan bag.xlsx --in-place      writes into bag.xlsx after a backup",
            "  bagwright plan bag-plan.xlsx --from-live -o next.xlsx",
            "                                          starts from the live choices of its sheet Plan"
        })
final class PlanCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the book, an .xlsx or .xlsm file")
    private Path file;

    @Option(names = "-o", paramLabel = "OUT", description = "where the result goes (default: FILE-plan)")
    private Path out;

    @Option(names = "--in-place", description = "write into FILE itself, after a backup")
    private boolean inPlace;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "20",
            description =
                    "the most time the search may take (default: ${DEFAULT-VALUE}); it stops as soon as it is done")
    private double seconds;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "the seed of the search; the same seed gives the same plan (default: ${DEFAULT-VALUE})")
    private long seed;

    @Option(
            names = "--from-live",
            description = "take the live choices of the sheet Plan of an earlier run as today's set-up: changes count "
                    + "from there, and the result's sheet Clubs says so")
    private boolean fromLive;

    @Option(names = "--json", description = "print one JSON document instead of text")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        checkSeconds(seconds);
        Path target = target(file, out, inPlace, "-plan");
        Planning planning = new Planning(seed, seconds);
        Interrupt interrupt = new Interrupt(planning);
        ProgressLine progress = new ProgressLine(spec.commandLine().getErr(), ProgressLine.isWatched());
        planning.onProgress(progress::told);
        try {
            Planning.FromLive start = start();
            Target.requireWritable(target);
            BookResult result = planning.plan(start.charted());
            progress.clear();
            Planning.Written written = Planning.write(file, result, start.changes(), target);
            tell(planning, result, target, written);
            return result.plannedBreaks() > 0 ? Main.MUSTS_NOT_MET : Main.DONE;
        } finally {
            progress.clear();
            interrupt.close();
        }
    }

    /** The book as it is, or with its live choices in the place of today's set-up. */
    private Planning.FromLive start() throws Exception {
        if (!fromLive) {
            return new Planning.FromLive(Planning.chart(file), List.of());
        }
        return Planning.chartFromLive(file)
                .orElseThrow(() -> new WrongArguments("--from-live needs live choices, and " + file
                        + " has no sheet Plan of an earlier run. Plan it first, choose on the sheet Plan of the"
                        + " result, then give that result here."));
    }

    static void checkSeconds(double seconds) throws WrongArguments {
        if (!(seconds > 0) || Double.isInfinite(seconds)) {
            throw new WrongArguments("--seconds must be above 0, found " + seconds);
        }
    }

    /**
     * Where a result goes that is a copy of the book.
     *
     * @param out where the person wants it; null is beside the book
     * @param inPlace into the book itself
     * @param suffix what the name of a copy beside the book gets, such as {@code -plan}
     */
    static Path target(Path file, Path out, boolean inPlace, String suffix) throws WrongArguments, IOException {
        if (inPlace && out != null) {
            throw new WrongArguments("Give either -o or --in-place, not both.");
        }
        if (file.getFileName() == null) {
            throw new WrongArguments(file + " is a folder. Give a book, an .xlsx or .xlsm file.");
        }
        if (inPlace) {
            return file;
        }
        Path target = out == null ? besides(file, suffix) : out;
        if (Files.exists(target) && Files.exists(file) && Files.isSameFile(target, file)) {
            throw new WrongArguments("The result would replace the book itself. To want that, say --in-place.");
        }
        requirePlace(target);
        String ending = ending(file);
        if (!ending(target).equalsIgnoreCase(ending)) {
            throw new WrongArguments(
                    "The result has the same kind of name as the book: let " + target + " end in " + ending);
        }
        return target;
    }

    /** Beside the book: {@code bag.xlsx} becomes {@code bag-plan.xlsx}. */
    static Path besides(Path file) {
        return besides(file, "-plan");
    }

    private static Path besides(Path file, String suffix) {
        String name = file.getFileName().toString();
        String ending = ending(file);
        return file.resolveSibling(name.substring(0, name.length() - ending.length()) + suffix + ending);
    }

    /** Whether a path can name a file to write: in a folder that is there, no folder itself, no link to nowhere. */
    static void requirePlace(Path target) throws WrongArguments {
        Path folder = target.toAbsolutePath().getParent();
        if (Files.isDirectory(target)) {
            throw new WrongArguments(target + " is a folder. Give the name of a file to write.");
        }
        if (!Files.isDirectory(folder)) {
            throw new WrongArguments("There is no folder " + folder + " to write into.");
        }
        if (Files.isSymbolicLink(target) && !Files.exists(target)) {
            throw new WrongArguments(target + " is a link that leads nowhere. Give another name.");
        }
    }

    static String ending(Path file) {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return dot <= 0 ? "" : name.substring(dot);
    }

    private void tell(Planning planning, BookResult result, Path target, Planning.Written written) {
        PrintWriter err = spec.commandLine().getErr();
        PrintWriter people = json ? err : spec.commandLine().getOut();
        if (json) {
            spec.commandLine().getOut().println(Json.text(Json.plan(result)));
        }
        new PlanText(result).lines().forEach(people::println);
        people.println("Result: " + target + " (open the sheet Plan)");
        written.backup().map(KeptText::line).ifPresent(people::println);
        if (fromLive) {
            LiveText.lines(result.book(), written).forEach(people::println);
        }
        MessageText.notes(written.notWritten()).forEach(err::println);
        if (planning.cappedByTime()) {
            people.println("The time limit ended the search; with more --seconds it may find a better plan.");
        }
        MessageText.briefNotes(result.messages()).forEach(err::println);
    }
}
