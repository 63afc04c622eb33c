package org.bagwright.cli;

import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/**
 * Bold and red for what is wrong, on terminals that show them. Nothing is told by them alone.
 *
 * @param on whether to use them
 */
record Ink(boolean on) {
    static final Ink NONE = new Ink(false);
    private static final String END = "\u001b[0m";

    /** For this process: both outputs must be a terminal. */
    static Ink ofProcess() {
        return new Ink(isWanted(System.getenv(), ScreenKind.isTerminal(1) && ScreenKind.isTerminal(2))
                && Ansi.AUTO.enabled());
    }

    /** Whether a terminal may have colours by what its user has set. */
    static boolean isWanted(Map<String, String> environment, boolean terminal) {
        return terminal
                && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "").equals("dumb");
    }

    static Ink of(CommandLine command) {
        return new Ink(command.getColorScheme().ansi() == Ansi.ON);
    }

    void giveTo(CommandLine command) {
        command.setColorScheme(CommandLine.Help.defaultColorScheme(on ? Ansi.ON : Ansi.OFF));
    }

    String bold(String text) {
        return on ? "\u001b[1m" + text + END : text;
    }

    String red(String text) {
        return on ? "\u001b[1;31m" + text + END : text;
    }
}
