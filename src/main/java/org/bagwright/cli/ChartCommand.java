package org.bagwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.bagwright.domain.ChartedBook;
import org.bagwright.planning.Planning;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code chart FILE}: every option of every club as a table. */
@Command(
        name = "chart",
        mixinStandardHelpOptions = true,
        description =
                "Show every option of every club: loft, lie, how it sits, launch, spin, carry. Nothing is written.",
        footerHeading = "%nExample:%n",
        footer = "  bagwright chart bag.xlsx --club driver")
final class ChartCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the book, an .xlsx or .xlsm file")
    private Path file;

    @Option(names = "--club", paramLabel = "NAME", description = "only clubs whose name contains this")
    private String club = "";

    @Option(names = "--json", description = "print one JSON document instead of text")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        ChartedBook charted = Planning.chart(file);
        if (json) {
            out.println(Json.text(Json.chart(charted)));
        } else {
            new ChartText(charted).lines(club).forEach(out::println);
        }
        MessageText.notes(charted.messages()).forEach(spec.commandLine().getErr()::println);
        return Main.DONE;
    }
}
