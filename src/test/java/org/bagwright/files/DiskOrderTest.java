package org.bagwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.ClosedChannelException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * In which order a file gets onto the disk, and what becomes of what another program saves in the middle of it. A name that
 * is on the disk before its content, or a content without its name, is a file lost with the power.
 */
@Tag("analytic")
class DiskOrderTest {
    /** A file that is replaced: the new content, a backup whole under its name, the new name. */
    private static final List<String> REPLACED =
            List.of("flush new", "flush old", "name bag.backup", "flush folder", "new is bag.xlsx", "flush folder");

    @TempDir
    Path folder;

    private Path file;
    private Recorder disk;

    private interface Save {
        void run() throws IOException;
    }

    /** Asks the real disk, notes what, and does something after one of the calls. */
    private static final class Recorder extends DiskCalls {
        private final List<String> calls = new ArrayList<>();
        private int savedAfter = -1;
        private Save save = () -> {};

        @Override
        void force(FileChannel written) throws IOException {
            long sizeBytes = written.size();
            super.force(written);
            note("flush " + (sizeBytes == 3 ? "new" : sizeBytes == 5 ? "old" : "folder"));
        }

        @Override
        void replace(Path fresh, Path target) throws IOException {
            assertTrue(Files.exists(fresh) && Files.exists(target));
            super.replace(fresh, target);
            note("new is " + target.getFileName());
        }

        @Override
        void link(Path name, Path file) throws IOException {
            super.link(name, file);
            note("name " + name.getFileName().toString().replaceFirst("(backup).*", "$1"));
        }

        private void note(String call) throws IOException {
            calls.add(call);
            if (calls.size() == savedAfter) {
                save.run();
            }
        }
    }

    @BeforeEach
    void book() throws IOException {
        file = Files.writeString(folder.resolve("bag.xlsx"), "older");
        disk = new Recorder();
    }

    @Test
    void replaced_contentThenBackupThenName_eachOnTheDiskBeforeTheNext() throws IOException {
        new SafeFile(file, disk).replace(out -> out.write(bytes("new")));
        assertEquals(REPLACED, disk.calls);
    }

    @Test
    void replacedAfterItsSourceWasCompared_inTheSameOrder() throws IOException {
        new SafeFile(file, disk).replace(out -> out.write(bytes("new")), new SourceFile(file));
        assertEquals(REPLACED, disk.calls);
    }

    @Test
    void replacedWithoutABackup_contentBeforeName() throws IOException {
        new SafeFile(file, disk).replaceOwn(out -> out.write(bytes("new")));
        assertEquals(List.of("flush new", "new is bag.xlsx", "flush folder"), disk.calls);
    }

    @Test
    void created_contentBeforeName() throws IOException {
        new SafeFile(folder.resolve("fresh.xlsx"), disk).create(out -> out.write(bytes("new")));
        assertEquals(List.of("flush new", "name fresh.xlsx", "flush folder"), disk.calls);
    }

    @Test
    void flush_asksTheSystem() throws IOException {
        FileChannel closed = FileChannel.open(file, StandardOpenOption.WRITE);
        closed.close();
        assertThrows(ClosedChannelException.class, () -> new DiskCalls().force(closed));
    }

    /** After whichever call it comes, what another program saves is in the book or in a backup afterwards. */
    @Test
    void savedByAnotherProgramInTheMiddle_isNeverLost() throws IOException {
        for (int call = 1; call <= REPLACED.size(); call++) {
            for (boolean renamed : List.of(false, true)) {
                String saved = "saved after call " + call + renamed;
                savedAfter(call, saved, renamed);
                assertTrue(contents().contains(saved), saved + ": " + contents());
            }
        }
    }

    /** Between the backup and the new name it is another program's book that would be replaced. */
    @Test
    void savedAfterTheBackup_isRefused() throws IOException {
        for (int call : List.of(REPLACED.indexOf("name bag.backup") + 1, REPLACED.indexOf("new is bag.xlsx"))) {
            assertTrue(savedAfter(call, "saved", false), "after call " + call);
            assertEquals("saved", Files.readString(file));
        }
    }

    /** A copy of what is being written may be half of it: it gets no name. */
    @Test
    void savedWhileTheBackupIsMade_isNoBackup() throws IOException {
        disk.savedAfter = 1;
        disk.save = () -> Files.writeString(file, "saved meanwhile");
        assertThrows(
                OpenElsewhereException.class, () -> new Backups(file, disk).make(LocalDateTime.now(ZoneOffset.UTC)));
        assertEquals(Set.of("saved meanwhile"), contents());
    }

    /** Whether the new file is refused when another program saves the old one after a call, in place or by a new file. */
    private boolean savedAfter(int call, String saved, boolean renamed) throws IOException {
        book();
        disk.savedAfter = call;
        disk.save = () -> {
            Path written = Files.writeString(renamed ? folder.resolve("theirs") : file, saved);
            if (renamed) {
                new DiskCalls().replace(written, file);
            }
        };
        try {
            new SafeFile(file, disk).replace(out -> out.write(bytes("new")));
            return false;
        } catch (OpenElsewhereException refused) {
            return true;
        }
    }

    private Set<String> contents() throws IOException {
        Set<String> contents = new HashSet<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path each : files.toList()) {
                contents.add(Files.readString(each));
            }
        }
        return contents;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
