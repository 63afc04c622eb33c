package org.bagwright.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code completion}: what a shell needs to complete commands and options. */
@Command(
        name = "completion",
        description = "Print a script for bash or zsh that completes commands, options and file names when you press"
                + " the tab key.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  source <(bagwright completion)             for this terminal only",
            "  bagwright completion > ~/.bagwright.sh     then put the line",
            "                                             source ~/.bagwright.sh into ~/.bashrc or ~/.zshrc"
        })
final class CompletionCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine()
                .getOut()
                .println(AutoComplete.bash("bagwright", spec.commandLine().getParent()));
        return Main.DONE;
    }
}
