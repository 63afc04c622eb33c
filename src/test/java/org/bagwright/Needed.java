package org.bagwright;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.condition.OS;

/** What a test needs of the machine. Without it the test is skipped, but in CI it fails: there nothing may be left out. */
public final class Needed {
    private Needed() {}

    /** Goes on only where something is there. */
    public static void here(boolean there, String what) {
        here(there, what, System.getenv("CI") != null);
    }

    static void here(boolean there, String what, boolean ci) {
        if (ci) {
            assertTrue(there, "needed in CI: " + what);
        }
        assumeTrue(there, "not on this machine: " + what);
    }

    /** Goes on only where files have access rights and links as on Linux. */
    public static void posix(Path folder) throws IOException {
        here(Files.getFileStore(folder).supportsFileAttributeView("posix"), "access rights of files");
    }

    /** Goes on only where files may have attributes of their own. */
    public static void labels(Path folder) throws IOException {
        here(Files.getFileStore(folder).supportsFileAttributeView("user"), "extended attributes of files");
    }

    /** Goes on only where what is set in Arial is printed with its widths: with another font there are more pages. */
    public static void arial() throws IOException {
        String font = "none";
        try {
            Process match = new ProcessBuilder("fc-match", "--format=%{family}", "Arial").start();
            font = new String(match.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException missing) {
            here(false, "fontconfig");
        }
        here(font.matches("(Arial|Arimo|Liberation Sans).*"), "Arial or Liberation Sans; there is " + font);
    }

    /** Goes on only on Linux. */
    public static void linux() {
        here(OS.LINUX.isCurrentOs(), "Linux");
    }

    /** Goes on everywhere but on Windows. */
    public static void notWindows() {
        here(!OS.WINDOWS.isCurrentOs(), "another system than Windows");
    }
}
