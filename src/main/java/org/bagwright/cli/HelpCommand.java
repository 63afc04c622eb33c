package org.bagwright.cli;

import java.util.concurrent.Callable;
import org.bagwright.domain.text.CloseNames;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code help COMMAND}: the same as {@code COMMAND --help}. */
@Command(
        name = "help",
        description = "Show the help of a command, or of all.",
        footerHeading = "%nExamples:%n",
        footer = {"  bagwright help         the commands", "  bagwright help plan    one command, with examples"})
final class HelpCommand implements Callable<Integer> {
    @Parameters(paramLabel = "COMMAND", arity = "0..1", description = "the command (default: all of them)")
    private String command;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws WrongArguments {
        CommandLine main = spec.commandLine().getParent();
        CommandLine asked = command == null ? main : main.getSubcommands().get(command);
        if (asked == null) {
            throw new WrongArguments("There is no command \"" + command + "\"."
                    + CloseNames.maybe(command, main.getSubcommands().keySet()));
        }
        asked.usage(spec.commandLine().getOut());
        return Main.DONE;
    }
}
