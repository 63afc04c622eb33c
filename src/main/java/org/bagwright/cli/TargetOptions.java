package org.bagwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Where a copy of the book goes. */
final class TargetOptions {
    @Option(names = "-o", paramLabel = "OUT", description = "where the result goes (default: a new name next to FILE)")
    private Path out;

    @Option(names = "--in-place", description = "write into FILE itself, after a backup")
    private boolean inPlace;

    /** The option given, if any. */
    String given() {
        return inPlace ? "--in-place" : out != null ? "-o" : "";
    }

    /** @param suffix what is added to the name of a copy next to the book */
    Path target(Path file, String suffix) throws WrongArguments, IOException {
        if (inPlace && out != null) {
            throw new WrongArguments("Give either -o or --in-place, not both.");
        }
        if (inPlace) {
            return file;
        }
        if (out != null && new NamedFile(file).isSame(out)) {
            throw new WrongArguments("The result would replace the book itself. If you want that, use --in-place.");
        }
        return new NamedFile(file).copy(out, suffix);
    }
}
