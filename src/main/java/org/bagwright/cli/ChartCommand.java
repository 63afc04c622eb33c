package org.bagwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.bagwright.cli.json.ChartJson;
import org.bagwright.cli.text.ChartText;
import org.bagwright.cli.text.MessageText;
import org.bagwright.cli.text.ProgressLine;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.ChartedBook;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.Charting;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code chart FILE}: every option of every club as a table. */
@Command(
        name = "chart",
        description =
                "Show every option of every club: loft, lie, how it sits, launch, spin, carry. Nothing is written.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  bagwright chart bag.xlsx                  every club",
            "  bagwright chart bag.xlsx --club driver    only clubs with this name",
            "  bagwright chart bag.xlsx --json           for another program"
        })
final class ChartCommand implements Callable<Integer> {
    @Mixin
    private BookArgument book;

    @Option(names = "--club", paramLabel = "NAME", description = "only clubs whose name contains this")
    private String club = "";

    @Mixin
    private JsonOption json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        ChartedBook charted;
        try (ProgressLine progress = ProgressLine.start(spec.commandLine().getErr())) {
            charted = new Charting(new SourceFile(book.file()), progress).chart();
        }
        if (json.wanted()) {
            json.print(spec.commandLine(), () -> new ChartJson(charted).document());
        } else {
            requireClub(charted);
            new ChartText(charted).lines(club).forEach(out::println);
        }
        new MessageText(charted.messages())
                .briefNotes()
                .forEach(spec.commandLine().getErr()::println);
        return Main.DONE;
    }

    private void requireClub(ChartedBook charted) throws WrongArguments {
        List<String> names = charted.bags().stream()
                .flatMap(bag -> bag.slots().stream())
                .flatMap(slot -> slot.clubs().stream())
                .map(Club::name)
                .toList();
        if (ChartText.matching(names, club).isEmpty()) {
            throw new WrongArguments("No club has \"" + club + "\" in its name." + CloseNames.maybe(club, names));
        }
    }
}
