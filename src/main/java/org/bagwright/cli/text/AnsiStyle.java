package org.bagwright.cli.text;

import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Ansi.Style;
import picocli.CommandLine.Help.ColorScheme;

/**
 * Bold and red for what is wrong, on terminals that show them. No meaning is carried by them alone.
 *
 * @param on whether to use them
 */
public record AnsiStyle(boolean on) {
    public static final AnsiStyle NONE = new AnsiStyle(false);
    private static final String END = "\u001b[0m";

    /** For this process: both outputs must be a terminal. */
    public static AnsiStyle ofProcess() {
        return new AnsiStyle(
                isWanted(System.getenv(), StandardOutput.TEXT.isTerminal() && StandardOutput.ERRORS.isTerminal())
                        && Ansi.AUTO.enabled());
    }

    /** Whether a terminal may have colours by what its user has set. */
    public static boolean isWanted(Map<String, String> environment, boolean terminal) {
        return terminal
                && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "").equals("dumb");
    }

    public static AnsiStyle of(CommandLine command) {
        return new AnsiStyle(command.getColorScheme().ansi() == Ansi.ON);
    }

    public void giveTo(CommandLine command) {
        command.setColorScheme(new ColorScheme.Builder(on ? Ansi.ON : Ansi.OFF)
                .commands(Style.bold)
                .options(Style.bold)
                .build());
    }

    String bold(String text) {
        return on ? "\u001b[1m" + text + END : text;
    }

    String red(String text) {
        return on ? "\u001b[1;31m" + text + END : text;
    }
}
