package org.bagwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.bagwright.cli.json.MessagesJson;
import org.bagwright.cli.text.AnsiStyle;
import org.bagwright.cli.text.MessageText;
import org.bagwright.domain.book.Message;
import org.bagwright.planning.Charting;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code check FILE}: every problem of a book, with its cell. */
@Command(
        name = "check",
        description = "List every problem in a book with its cell. Nothing is written.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  bagwright check bag.xlsx           problems first, then what was assumed",
            "  bagwright check bag.xlsx --json    for another program"
        })
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private BookArgument book;

    @Mixin
    private JsonOption json;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Exception {
        PrintWriter out = spec.commandLine().getOut();
        List<Message> messages = new Charting(book.file()).check();
        if (json.wanted()) {
            json.print(spec.commandLine(), () -> new MessagesJson(messages).document());
        } else {
            new MessageText(messages).problems(AnsiStyle.of(spec.commandLine())).forEach(out::println);
        }
        boolean wrong = messages.stream().anyMatch(message -> message.severity() == Message.Severity.PROBLEM);
        return wrong ? Main.WRONG_WORKBOOK : Main.DONE;
    }
}
