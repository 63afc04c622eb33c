package org.bagwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintWriter;
import java.util.function.Supplier;
import org.bagwright.cli.json.PrintedJson;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** Output for another program. */
final class JsonOption {
    @Option(names = "--json", description = "print one JSON document instead of text")
    private boolean json;

    boolean wanted() {
        return json;
    }

    /** Prints a document where one is wanted; it is made only then. */
    void print(CommandLine command, Supplier<ObjectNode> document) {
        if (json) {
            command.getOut().println(new PrintedJson(document.get()).text());
        }
    }

    /** Where text for people goes. */
    PrintWriter people(CommandLine command) {
        return json ? command.getErr() : command.getOut();
    }
}
