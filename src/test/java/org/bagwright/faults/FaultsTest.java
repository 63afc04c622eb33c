package org.bagwright.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A short version of the table of faults in {@code src/docs/faults.md}. */
@Tag("regression")
class FaultsTest {
    private static final int MOST_TRIES = 15;

    @TempDir
    static Path program;

    private static Launched launched;

    @TempDir
    Path folder;

    @BeforeAll
    static void pack() throws Exception {
        launched = new Launched(program);
    }

    @Test
    void places_loseNothing() throws Exception {
        for (FaultRow row : new PlaceFaults(folder).all()) {
            assertEquals(List.of(), row.losses(), row.line());
            assertEquals(1, row.tries(), row.line());
        }
    }

    @Test
    void fullDisks_loseNothing() throws Exception {
        for (FaultRow row : new DiskFaults(folder).all(1)) {
            assertEquals(List.of(), row.losses(), row.line());
        }
    }

    @ParameterizedTest
    @EnumSource
    void killedRuns_loseNothing(KilledCommand command) throws Exception {
        KilledRuns runs = new KilledRuns(folder, launched, command, Duration.ofMinutes(5));
        runs.measure();
        int hits = 0;
        for (int tries = 0; tries < MOST_TRIES && hits < 2; tries++) {
            assertEquals(List.of(), runs.kill(KilledRuns.From.FIRST_BYTE, 1).losses());
            hits += runs.hits();
        }
        assertTrue(hits >= 2, "between the first byte and the rename: " + hits);
        assertEquals(List.of(), runs.kill(KilledRuns.From.SECOND_FILE, 2).losses());
    }

    @Test
    void threeRunsAtOnce_loseNothing() throws Exception {
        FaultRow row = new PlaceFaults(folder).atOnce(launched, 3, 1);
        assertEquals(List.of(), row.losses(), row.line());
    }
}
