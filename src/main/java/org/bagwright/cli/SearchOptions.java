package org.bagwright.cli;

import org.bagwright.planning.Planning;
import picocli.CommandLine.Option;

/** How long a search may take, and its seed. */
final class SearchOptions {
    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "20",
            description = "the most time to search one book, in seconds (default: ${DEFAULT-VALUE}); it stops as soon"
                    + " as it is done")
    private double seconds;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "the seed of the search; the same seed gives the same plan (default: ${DEFAULT-VALUE})")
    private long seed;

    /** Refuses what is no time. */
    void check() throws WrongArguments {
        if (!(seconds > 0) || Double.isInfinite(seconds)) {
            throw new WrongArguments("--seconds must be above 0, found " + seconds);
        }
    }

    Planning planning() {
        return new Planning(seed, seconds);
    }
}
