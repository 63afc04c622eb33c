package org.bagwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.bagwright.cli.json.GaugeJson;
import org.bagwright.cli.text.GaugeText;
import org.bagwright.cli.text.KeptText;
import org.bagwright.cli.text.MessageText;
import org.bagwright.domain.gauge.GaugedBook;
import org.bagwright.domain.gauge.Repeatability;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.Gauging;
import org.bagwright.planning.Target;
import org.bagwright.planning.WorkbookProblems;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code gauge FILE}: what the gauge readings tell of heads and sleeves, and on request a book that states it. */
@Command(
        name = "gauge",
        description = "Fit heads and sleeves to the sheet Readings and show what was found and how certain it is. "
                + "Nothing is written without --write.",
        footerHeading = "%n" + KeptText.RULE + "%n%nExamples:%n",
        footer = {
            "  bagwright gauge bag.xlsx                        show what the readings mean",
            "  bagwright gauge bag.xlsx --repeatability 0.1    the same for a finer gauge",
            "  bagwright gauge bag.xlsx --write                writes bag-gauged.xlsx"
        })
final class GaugeCommand implements Callable<Integer> {
    private static final double MOST_REPEATABILITY_DEG = 5;

    @Mixin
    private BookArgument book;

    @Option(
            names = "--write",
            description = "write a copy of the book whose Loft, Lie, Face, Clock and Bend cells hold the results, "
                    + "each with a note")
    private boolean write;

    @Mixin
    private TargetOptions target;

    @Option(
            names = "--repeatability",
            paramLabel = "DEG",
            description = "how well your gauge repeats a reading, one standard deviation in degrees (default: "
                    + "what the readings show, or 0.25 where they are too few)")
    private Optional<Double> repeatabilityDeg;

    @Mixin
    private JsonOption json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        OptionalDouble givenDeg =
                repeatabilityDeg.stream().mapToDouble(deg -> deg).findFirst();
        if (givenDeg.isPresent() && !(givenDeg.getAsDouble() > 0 && givenDeg.getAsDouble() <= MOST_REPEATABILITY_DEG)) {
            throw new WrongArguments(
                    "--repeatability must be above 0 and at most 5 degrees, found " + givenDeg.getAsDouble());
        }
        if (!write && !target.given().isEmpty()) {
            throw new WrongArguments(
                    "Nothing is written without --write: add it, or leave out " + target.given() + ".");
        }
        Path file = book.file();
        Path copy = target.target(file, NamedFile.GAUGED);
        PrintWriter err = spec.commandLine().getErr();
        PrintWriter people = json.people(spec.commandLine());
        Gauging gauging = new Gauging(Repeatability.of(givenDeg));
        Gauged done = new SavedMeanwhile(file, err).repeat(source -> gauged(source, gauging, copy));
        GaugedBook gauged = done.book();
        json.print(spec.commandLine(), () -> new GaugeJson(gauged).document());
        new GaugeText(gauged).lines().forEach(people::println);
        new MessageText(gauged.messages()).notes().forEach(err::println);
        done.written().ifPresent(written -> tell(people, err, copy, written));
        return Main.DONE;
    }

    /** What was learnt, and what was written of it. */
    private record Gauged(GaugedBook book, Optional<Gauging.Written> written) {}

    private Gauged gauged(SourceFile source, Gauging gauging, Path copy) throws WorkbookProblems, IOException {
        GaugedBook gauged = gauging.gauge(source);
        if (!write) {
            return new Gauged(gauged, Optional.empty());
        }
        new Target(copy).requireWritable();
        return new Gauged(gauged, Optional.of(Gauging.write(source, gauged, copy)));
    }

    private static void tell(PrintWriter people, PrintWriter err, Path target, Gauging.Written written) {
        GaugeText.changes(written.changes()).forEach(people::println);
        people.println("Written: " + target);
        written.backup().map(kept -> new KeptText(kept).line()).ifPresent(people::println);
        new MessageText(written.notWritten()).notes().forEach(err::println);
    }
}
