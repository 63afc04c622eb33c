package org.bagwright.cli.text;

import java.io.Console;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The two outputs of a process, and whether a person watches them. */
enum StandardOutput {
    TEXT(1),
    ERRORS(2);

    private final int descriptor;

    StandardOutput(int descriptor) {
        this.descriptor = descriptor;
    }

    /**
     * Whether it goes to a terminal. Linux says so for each output; elsewhere there is a console only where input and output
     * both are a terminal.
     */
    boolean isTerminal() {
        Path link = Path.of("/proc/self/fd/" + descriptor);
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
