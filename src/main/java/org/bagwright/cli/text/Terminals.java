package org.bagwright.cli.text;

import java.io.Console;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether a person watches what is printed. */
final class Terminals {
    private Terminals() {}

    /**
     * Whether an output of this process goes to a terminal. Linux tells it of each; elsewhere there is a console only where
     * input and output both are a terminal.
     *
     * @param stream 1 for the output, 2 for errors
     */
    static boolean isTerminal(int stream) {
        Path link = Path.of("/proc/self/fd/" + stream);
        try {
            if (Files.isSymbolicLink(link)) {
                String device = Files.readSymbolicLink(link).toString();
                return device.startsWith("/dev/pts/") || device.startsWith("/dev/tty") || device.equals("/dev/console");
            }
        } catch (IOException unknown) {
            return isInteractive();
        }
        return isInteractive();
    }

    /** From Java 22 on there may be a console that is no terminal, which then says so. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean isInteractive() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException olderJava) {
            return true;
        } catch (IllegalAccessException | InvocationTargetException unknown) {
            return false;
        }
    }
}
