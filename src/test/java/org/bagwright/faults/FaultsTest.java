package org.bagwright.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A short version of the table of faults in {@code src/docs/faults.md}. */
@Tag("regression")
class FaultsTest {
    @TempDir
    Path folder;

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

    @Test
    void killedRuns_loseNothing() throws Exception {
        KilledRuns runs = new KilledRuns(folder, new Launched(folder), Duration.ofMinutes(5));
        runs.measure();
        assertEquals(List.of(), runs.kill(KilledRuns.From.TEMPORARY, 3).losses());
        assertEquals(List.of(), runs.kill(KilledRuns.From.SECOND_FILE, 3).losses());
    }
}
