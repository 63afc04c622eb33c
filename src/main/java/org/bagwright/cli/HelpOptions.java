package org.bagwright.cli;

import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The options for help and version, alike on every command. */
final class HelpOptions {
    private HelpOptions() {}

    static void addTo(CommandLine command) {
        command.getCommandSpec()
                .versionProvider(new Main.Version())
                .addOption(OptionSpec.builder("-h", "-?", "--help")
                        .usageHelp(true)
                        .description("show this help")
                        .build())
                .addOption(OptionSpec.builder("-V", "--version")
                        .versionHelp(true)
                        .description("show the version")
                        .build());
        command.getSubcommands().values().forEach(HelpOptions::addTo);
    }
}
