package org.bagwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.bagwright.faults.FileHolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book that another program has locked is not replaced. */
@Tag("regression")
class LockedBookTest {
    @TempDir
    Path folder;

    private Path book;

    @BeforeEach
    void writeBook() throws IOException {
        book = Files.writeString(folder.resolve("bag.xlsx"), "theirs");
    }

    private void assertRefused() throws IOException {
        OpenElsewhereException refused =
                assertThrows(OpenElsewhereException.class, () -> new SafeFile(book).replace(LockedBookTest::write));
        assertTrue(refused.getMessage().contains("open and locked"), refused.getMessage());
        assertEquals("theirs", Files.readString(book));
    }

    private static void write(OutputStream out) throws IOException {
        out.write("ours".getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void lockOfAnotherProcess_refusesTheBookUntilItEnds() throws Exception {
        Process holder = FileHolder.hold(book);
        try {
            assertRefused();
        } finally {
            holder.getOutputStream().close();
        }
        holder.waitFor();
        new SafeFile(book).replace(LockedBookTest::write);
        assertEquals("ours", Files.readString(book));
    }

    @Test
    void lockOfThisProcess_refusesTheBook() throws IOException {
        try (FileChannel channel = FileChannel.open(book, StandardOpenOption.WRITE);
                FileLock lock = channel.lock()) {
            assertTrue(lock.isValid());
            assertRefused();
        }
    }
}
