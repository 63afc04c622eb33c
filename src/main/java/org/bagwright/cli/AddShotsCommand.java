package org.bagwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.bagwright.cli.json.AddedJson;
import org.bagwright.cli.text.AddedText;
import org.bagwright.cli.text.KeptText;
import org.bagwright.domain.session.AddedShots;
import org.bagwright.files.KeptFile;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.AddingShots;
import org.bagwright.planning.Target;
import org.bagwright.sessions.SessionOptions;
import org.bagwright.sessions.WrongOptionException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code add-shots BOOK FILE...}: the shots of a session from a file into the sheet Shots. */
@Command(
        name = "add-shots",
        description =
                "Read files of shots (.csv, .xlsx or .xls) and add their shots to the sheet Shots, each with its date"
                        + " and with today's set-up. A shot that the book has already is not added again.",
        footerHeading = "%n" + KeptText.RULE + "%n%nExamples:%n",
        footer = {
            "  bagwright add-shots bag.xlsx may.csv --dry-run    show what would be added",
            "  bagwright add-shots bag.xlsx may.csv              writes bag-shots.xlsx",
            "  bagwright add-shots bag.xlsx may.csv --column \"Flight=Carry (m)\"",
            "  bagwright add-shots bag.xlsx may.csv --setting \"Driver=2\""
        })
final class AddShotsCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "BOOK", description = "the book, an .xlsx or .xlsm file")
    private Path book;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "FILE",
            description =
                    "a file of shots: a table with a heading for each column, at least Club and one of Ball speed,"
                            + " Launch, Spin and Carry")
    private List<Path> files;

    @Option(names = "--golfer", paramLabel = "NAME", description = "who hit the shots, where the file does not say it")
    private String golfer;

    @Option(
            names = "--date",
            paramLabel = "DAY",
            description = "the day of the shots, such as 2026-05-31, where the file does not say it")
    private LocalDate date;

    @Option(
            names = "--setting",
            paramLabel = "CLUB=MARK",
            description = "the setting of a club's sleeve for these shots (default: today's)")
    private List<String> settings = new ArrayList<>();

    @Option(
            names = "--column",
            paramLabel = "HEADING=COLUMN",
            description = "the column of the sheet Shots that a heading of the file means, or none; with a unit:"
                    + " \"Flight=Carry (m)\". The book remembers it")
    private List<String> columns = new ArrayList<>();

    @Option(
            names = "--speed",
            paramLabel = "UNIT",
            description = "mph, m/s or km/h, where the file does not say it (default: as in the book)")
    private String speed;

    @Option(
            names = "--distance",
            paramLabel = "UNIT",
            description = "yd, m or ft, where the file does not say it (default: as in the book)")
    private String distance;

    @Option(
            names = "--sheet",
            paramLabel = "NAME",
            description = "the sheet of a workbook of shots (default: the first with such headings)")
    private String sheet;

    @Option(names = "--dry-run", description = "show what would be added and write nothing")
    private boolean dryRun;

    @Mixin
    private TargetOptions target;

    @Mixin
    private JsonOption json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        Path copy = target.target(book, NamedFile.SHOTS);
        PrintWriter people = json.people(spec.commandLine());
        try {
            Added added = new SavedMeanwhile(book, spec.commandLine().getErr()).repeat(source -> added(source, copy));
            new AddedText(added.result(), dryRun).lines().forEach(people::println);
            if (added.written()) {
                people.println("Written: " + copy);
                added.kept().map(file -> new KeptText(file).line()).ifPresent(people::println);
            } else {
                people.println(
                        dryRun ? "Nothing is written: this is a dry run." : "Nothing is written: nothing is new.");
            }
            Optional<String> written = added.written() ? Optional.of(copy.toString()) : Optional.empty();
            json.print(spec.commandLine(), () -> new AddedJson(added.result(), written).document());
            return Main.DONE;
        } catch (WrongOptionException wrong) {
            throw new WrongArguments(wrong.getMessage());
        }
    }

    /** What was added, and what was written of it. */
    private record Added(AddedShots result, boolean written, Optional<KeptFile> kept) {}

    private Added added(SourceFile source, Path copy) throws Exception {
        try (AddingShots adding = AddingShots.read(source, request())) {
            AddedShots result = adding.result();
            if (dryRun || !result.isAny()) {
                return new Added(result, false, Optional.empty());
            }
            new Target(copy).requireWritable();
            return new Added(result, true, adding.write(copy));
        }
    }

    private AddingShots.Request request() {
        SessionOptions options = new SessionOptions(
                Optional.ofNullable(golfer),
                Optional.ofNullable(date),
                settings,
                Optional.ofNullable(speed),
                Optional.ofNullable(distance));
        return new AddingShots.Request(files, Optional.ofNullable(sheet), columns, options);
    }
}
