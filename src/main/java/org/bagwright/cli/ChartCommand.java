package org.bagwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.bagwright.domain.ChartedBook;
import org.bagwright.domain.Club;
import org.bagwright.planning.Meant;
import org.bagwright.planning.Planning;
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
            charted = Planning.chart(book.file(), progress);
        }
        if (json.wanted()) {
            out.println(Json.text(Json.chart(charted)));
        } else {
            requireClub(charted);
            new ChartText(charted).lines(club).forEach(out::println);
        }
        MessageText.briefNotes(charted.messages()).forEach(spec.commandLine().getErr()::println);
        return Main.DONE;
    }

    private void requireClub(ChartedBook charted) throws WrongArguments {
        List<String> names = charted.bags().stream()
                .flatMap(bag -> bag.slots().stream())
                .flatMap(slot -> slot.clubs().stream())
                .map(Club::name)
                .toList();
        if (ChartText.matching(names, club).isEmpty()) {
            throw new WrongArguments("No club has \"" + club + "\" in its name." + Meant.maybe(club, names));
        }
    }
}
