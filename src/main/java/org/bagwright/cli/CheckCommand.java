package org.bagwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.bagwright.domain.Message;
import org.bagwright.planning.Planning;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code check FILE}: every problem of a book, with its cell. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "List everything that is wrong in a book, each with its cell. Nothing is written.",
        footerHeading = "%nExample:%n",
        footer = "  bagwright check bag.xlsx")
final class CheckCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the book, an .xlsx or .xlsm file")
    private Path file;

    @Option(names = "--json", description = "print one JSON document instead of text")
    private boolean json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        List<Message> messages = Planning.check(file);
        if (json) {
            out.println(Json.text(Json.check(messages)));
        } else {
            MessageText.problems(messages).forEach(out::println);
        }
        boolean wrong = messages.stream().anyMatch(message -> message.severity() == Message.Severity.PROBLEM);
        return wrong ? Main.WRONG_WORKBOOK : Main.DONE;
    }
}
