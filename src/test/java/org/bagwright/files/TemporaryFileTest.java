package org.bagwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.bagwright.faults.FileHolder;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("analytic")
class TemporaryFileTest {
    private static final FileTime LONG_AGO = FileTime.from(Instant.parse("2020-01-01T00:00:00Z"));

    @TempDir
    Path folder;

    private Path aged(String name) throws IOException {
        Path file = Files.writeString(folder.resolve(name), "x");
        return Files.setLastModifiedTime(file, LONG_AGO);
    }

    private void tidy() throws IOException {
        new SafeFile(folder.resolve("bag.xlsx")).replace(out -> out.write(bytes("new")));
    }

    @Test
    void leftBehind_ofAKilledRun_isRemovedByTheNextRunInThatFolder() throws IOException {
        Path left = aged(".bagwright-123.tmp");
        tidy();
        assertFalse(Files.exists(left));
    }

    @Test
    void leftBehind_youngOrOfAnotherNameOrNoPlainFile_stays() throws IOException {
        Path young = Files.writeString(folder.resolve(".bagwright-1.tmp"), "x");
        List<Path> others =
                List.of(aged(".bagwright-notes.tmp"), aged(".bagwright-1.tmp.xlsx"), aged("bagwright-1.tmp"));
        Path inside = Files.createDirectories(folder.resolve(".bagwright-2.tmp"));
        Files.setLastModifiedTime(inside, LONG_AGO);
        Path link = Files.createSymbolicLink(folder.resolve(".bagwright-3.tmp"), aged("own.txt"));
        tidy();
        assertTrue(Files.exists(young) && Files.isDirectory(inside) && Files.exists(link));
        others.forEach(other -> assertTrue(Files.exists(other), other.toString()));
    }

    /** The lock is another process's, as that of another run; once it has ended the file goes. */
    @Test
    void leftBehind_lockedByAnotherProcess_staysUntilThatEnds() throws IOException, InterruptedException {
        Path inUse = aged(".bagwright-456.tmp");
        Process holder = FileHolder.hold(inUse);
        try {
            tidy();
            assertTrue(Files.exists(inUse));
        } finally {
            holder.destroy();
            holder.waitFor();
        }
        tidy();
        assertFalse(Files.exists(inUse));
    }

    /** However old a run's own file looks, a second run in the folder does not take it away. */
    @Test
    void ownFile_whileItIsWritten_survivesAnotherRunInTheFolder() throws IOException {
        new SafeFile(folder.resolve("slow.xlsx")).replace(out -> {
            out.write(bytes("slow"));
            for (Path temporary : temporaries()) {
                Files.setLastModifiedTime(temporary, LONG_AGO);
            }
            tidy();
            assertEquals(1, temporaries().size());
        });
        assertEquals("slow", Files.readString(folder.resolve("slow.xlsx")));
    }

    @Test
    void become_nameTaken_throwsAndTheOtherFileStays() throws IOException {
        Path taken = Files.writeString(folder.resolve("taken.xlsx"), "theirs");
        try (TemporaryFile file = TemporaryFile.in(folder, new DiskCalls())) {
            file.write(out -> out.write(bytes("ours")));
            assertThrows(FileAlreadyExistsException.class, () -> file.become(taken));
        }
        assertEquals("theirs", Files.readString(taken));
        assertEquals(List.of(), temporaries());
    }

    /** A library that writes in many small steps, or closes what it was lent, gets everything onto the disk. */
    @Test
    void write_byteByByteAndClosed_isWhole() throws IOException {
        Path file = folder.resolve("bag.xlsx");
        new SafeFile(file).replace(out -> {
            try (OutputStream closed = out) {
                for (int value = 0; value < 100_000; value++) {
                    closed.write(value);
                }
            }
        });
        byte[] written = Files.readAllBytes(file);
        assertEquals(100_000, written.length);
        assertEquals((byte) 99_999, written[99_999]);
    }

    private List<Path> temporaries() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().endsWith(".tmp"))
                    .toList();
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** So that another run does not take it for one that a killed run left. */
    @Test
    void temporaryFile_isLockedWhileItIsWritten() throws IOException {
        new SafeFile(folder.resolve("bag.xlsx")).replace(out -> {
            Path temporary;
            try (Stream<Path> files = Files.list(folder)) {
                temporary = files.findFirst().orElseThrow();
            }
            try (FileChannel other = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
                assertThrows(OverlappingFileLockException.class, other::tryLock);
            }
        });
    }
}
