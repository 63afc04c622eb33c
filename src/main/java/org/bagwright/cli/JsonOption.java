package org.bagwright.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Output for another program. */
final class JsonOption {
    @Option(names = "--json", description = "print one JSON document instead of text")
    private boolean json;

    boolean wanted() {
        return json;
    }

    /** Where text for people goes. */
    PrintWriter people(CommandLine command) {
        return json ? command.getErr() : command.getOut();
    }
}
