package org.bagwright.cli;

import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The options for help and version, alike on every command. */
final class HelpOptions implements CommandLine.IVersionProvider {

    static void addTo(CommandLine command) {
        command.getCommandSpec()
                .versionProvider(new HelpOptions())
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

    /** The version from the jar's manifest. */
    @Override
    public String[] getVersion() {
        String version = HelpOptions.class.getPackage().getImplementationVersion();
        return new String[] {"bagwright " + (version == null ? "(not packaged)" : version)};
    }
}
