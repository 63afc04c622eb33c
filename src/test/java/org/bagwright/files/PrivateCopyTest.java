package org.bagwright.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A copy of people's data exists no longer than it is used. */
@Tag("regression")
class PrivateCopyTest {
    private static final byte[] BYTES = {1, 2, 3};

    @TempDir
    Path folder;

    @Test
    void copy_isForTheOwnerOnlyAndGoesAtTheEnd() throws IOException {
        Path copy;
        try (PrivateCopy copies = PrivateCopy.open()) {
            copy = copies.put(Path.of("bag.xlsx"), BYTES);
            assertArrayEquals(BYTES, Files.readAllBytes(copy));
            if (Files.getFileStore(copy).supportsFileAttributeView("posix")) {
                assertEquals(
                        "rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(copy.getParent())));
            }
        }
        assertFalse(Files.exists(copy.getParent()));
    }

    @Test
    void folderOfAProcessThatIsGone_isRemoved_othersStay() throws Exception {
        long gone = goneProcess();
        Path abandoned = shelf("bagwright-copy-" + gone + "-123");
        Path ours = shelf("bagwright-copy-" + ProcessHandle.current().pid() + "-123");
        Path other = shelf("bagwright-copy-of-my-bag");
        PrivateCopy.removeAbandoned(folder);
        assertFalse(Files.exists(abandoned));
        assertTrue(Files.exists(ours.resolve("bag.xlsx")));
        assertTrue(Files.exists(other.resolve("bag.xlsx")));
    }

    /** The number of a process that has ended. */
    private static long goneProcess() throws Exception {
        Process gone = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-version")
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertEquals(0, gone.waitFor());
        return gone.pid();
    }

    private Path shelf(String name) throws IOException {
        Path shelf = Files.createDirectory(folder.resolve(name));
        Files.write(shelf.resolve("bag.xlsx"), BYTES);
        return shelf;
    }

    @Test
    void nextCopy_removesTheFolderOfAProcessThatIsGone() throws Exception {
        try (PrivateCopy first = PrivateCopy.open()) {
            Path among = first.put(Path.of("bag.xlsx"), BYTES).getParent().getParent();
            long gone = goneProcess();
            Path abandoned = Files.createDirectory(among.resolve("bagwright-copy-" + gone + "-1"));
            PrivateCopy.open().close();
            assertFalse(Files.exists(abandoned));
        }
    }
}
