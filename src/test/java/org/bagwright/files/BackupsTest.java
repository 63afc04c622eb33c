package org.bagwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bagwright.Needed;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Backups lose nothing: what is made is whole, what is removed keeps to the stated rule. */
@Tag("analytic")
class BackupsTest {
    private static final LocalDateTime FIRST_DAY = LocalDateTime.of(2026, 1, 30, 9, 0);

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void book() throws IOException {
        file = Files.writeString(folder.resolve("my.bag.xlsx"), "old");
        Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2026-01-01T08:00:00Z")));
    }

    @Test
    void make_standsBesideTheFileWithItsTimeBeforeTheExtension() throws IOException {
        LocalDateTime when = LocalDateTime.of(2026, 1, 31, 12, 0, 5);
        Path first = new Backups(file, new DiskCalls()).make(when);
        Files.writeString(file, "newer");
        Path second = new Backups(file, new DiskCalls()).make(when);
        assertEquals("my.bag.backup-20260131-120005.xlsx", first.getFileName().toString());
        assertEquals(
                "my.bag.backup-20260131-120005-2.xlsx", second.getFileName().toString());
        assertEquals("old", Files.readString(first));
        assertEquals("newer", Files.readString(second));
        assertEquals(3, names().size(), names().toString());
    }

    @Test
    void make_keepsTheFilesRightsAndTime() throws IOException {
        Needed.posix(folder);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
        Path backup = new Backups(file, new DiskCalls()).make(FIRST_DAY);
        assertEquals("rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(backup)));
        assertEquals(Files.getLastModifiedTime(file), Files.getLastModifiedTime(backup));
    }

    @Test
    void make_noSuchFile_throwsAndLeavesNothing() throws IOException {
        Files.delete(file);
        assertThrows(NoSuchFileException.class, () -> new Backups(file, new DiskCalls()).make(FIRST_DAY));
        assertEquals(List.of(), names());
    }

    /** Names are taken even by folders; a backup never takes another's place. */
    @Test
    void make_everyNameTaken_throwsAndTouchesNone() throws IOException {
        for (int copy = 1; copy <= 100; copy++) {
            String again = copy == 1 ? "" : "-" + copy;
            Files.writeString(folder.resolve("my.bag.backup-20260130-090000" + again + ".xlsx"), "taken " + copy);
        }
        List<String> before = names();
        assertThrows(FileAlreadyExistsException.class, () -> new Backups(file, new DiskCalls()).make(FIRST_DAY));
        assertEquals(before, names());
        assertEquals("taken 1", Files.readString(folder.resolve("my.bag.backup-20260130-090000.xlsx")));
    }

    /** Twenty on one day and fifteen on the next: the two firsts and the ten newest stay. */
    @Test
    void removeOlder_keepsTheTenNewestAndTheFirstOfEachDay() throws IOException {
        List<String> expected = new ArrayList<>(List.of("my.bag.xlsx"));
        for (int minute = 0; minute < 20; minute++) {
            Path made = new Backups(file, new DiskCalls()).make(FIRST_DAY.plusMinutes(minute));
            if (minute == 0) {
                expected.add(made.getFileName().toString());
            }
        }
        for (int minute = 0; minute < 15; minute++) {
            Path made = new Backups(file, new DiskCalls())
                    .make(FIRST_DAY.plusDays(1).plusMinutes(minute));
            if (minute == 0 || minute >= 5) {
                expected.add(made.getFileName().toString());
            }
        }
        assertEquals(19 + 4, new Backups(file, new DiskCalls()).removeOlder());
        assertEquals(expected.stream().sorted().toList(), names());
        assertEquals(0, new Backups(file, new DiskCalls()).removeOlder());
    }

    @Test
    void removeOlder_ofOneSecond_goesByTheNumberAsANumber() throws IOException {
        for (int copy = 0; copy < 13; copy++) {
            new Backups(file, new DiskCalls()).make(FIRST_DAY);
        }
        assertEquals(2, new Backups(file, new DiskCalls()).removeOlder());
        assertTrue(names().contains("my.bag.backup-20260130-090000.xlsx"), "the first of the day");
        assertTrue(names().contains("my.bag.backup-20260130-090000-13.xlsx"), "the newest");
        assertEquals(
                List.of(),
                names().stream()
                        .filter(name -> name.contains("090000-2.") || name.contains("090000-3."))
                        .toList());
    }

    @Test
    void removeOlder_leavesWhatAPersonWorkedInOrHasOpenAndOtherFiles() throws IOException {
        for (int minute = 0; minute < 14; minute++) {
            new Backups(file, new DiskCalls()).make(FIRST_DAY.plusMinutes(minute));
        }
        Path edited = folder.resolve("my.bag.backup-20260130-090100.xlsx");
        Files.setLastModifiedTime(edited, FileTime.from(Instant.now()));
        Path open = folder.resolve("my.bag.backup-20260130-090200.xlsx");
        Files.writeString(folder.resolve("~$" + open.getFileName()), "Golfer A");
        List<String> others = List.of(
                "my.bag.backup-20260130-090000-copy.xlsx",
                "my.bag.backup-of-june.xlsx",
                "bag.backup-20200101-090000.xlsx",
                "my.bag.backup-20260130-090000.ods");
        for (String other : others) {
            Files.writeString(folder.resolve(other), "a fitter's own");
        }
        assertEquals(1, new Backups(file, new DiskCalls()).removeOlder());
        assertTrue(Files.exists(edited) && Files.exists(open));
        assertTrue(names().containsAll(others), names().toString());
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
