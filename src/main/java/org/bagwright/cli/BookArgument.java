package org.bagwright.cli;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** The book that a command reads. */
final class BookArgument {
    @Parameters(paramLabel = "FILE", description = "the book, an .xlsx or .xlsm file")
    private Path file;

    Path file() {
        return file;
    }
}
