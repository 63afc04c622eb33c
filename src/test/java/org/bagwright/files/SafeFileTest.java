package org.bagwright.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bagwright.Needed;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("analytic")
class SafeFileTest {
    @TempDir
    Path folder;

    @Test
    void replace_newFileAndOldFile_haveTheNewContentAndOnlyABackupIsLeft() throws IOException {
        Path file = folder.resolve("bag.xlsx");
        new SafeFile(file).replace(out -> out.write(bytes("one")));
        assertEquals("one", Files.readString(file));
        new SafeFile(file).replace(out -> out.write(bytes("two")));
        assertEquals("two", Files.readString(file));
        assertEquals(2, names().size(), names().toString());
    }

    @Test
    void replace_writerFailsHalfWay_oldFileIsUntouchedAndNoTemporaryFileIsLeft() throws IOException {
        Path file = folder.resolve("bag.xlsx");
        Files.writeString(file, "old");
        IOException thrown = assertThrows(IOException.class, () -> new SafeFile(file).replace(out -> {
            out.write(bytes("half"));
            throw new IOException("disk full");
        }));
        assertEquals("disk full", thrown.getMessage());
        assertEquals("old", Files.readString(file));
        assertEquals(List.of("bag.xlsx"), names());
    }

    @Test
    void replace_folderInTheWay_failsAndLeavesNoTemporaryFile() throws IOException {
        Path inTheWay =
                Files.createDirectories(folder.resolve("bag.xlsx/inside")).getParent();
        assertThrows(IOException.class, () -> new SafeFile(inTheWay).replace(out -> out.write(bytes("x"))));
        assertEquals(List.of("bag.xlsx"), names());
    }

    @Test
    void replace_whileWriting_onlyTheOwnerMayReadTheTemporaryFile() throws IOException {
        Needed.posix(folder);
        new SafeFile(folder.resolve("bag.xlsx")).replace(out -> {
            Path temporary;
            try (Stream<Path> files = Files.list(folder)) {
                temporary = files.findFirst().orElseThrow();
            }
            assertTrue(temporary.getFileName().toString().endsWith(".tmp"));
            assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(temporary)));
        });
    }

    @Test
    void replace_existingFile_keepsItsAccessRights() throws IOException {
        Needed.posix(folder);
        Path file = Files.writeString(folder.resolve("bag.xlsx"), "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
        new SafeFile(file).replace(out -> out.write(bytes("new")));
        assertEquals("rw-r--r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void replace_link_writesTheFileItPointsTo() throws IOException {
        Path file = Files.writeString(folder.resolve("bag.xlsx"), "old");
        Path link = folder.resolve("link.xlsx");
        try {
            Files.createSymbolicLink(link, file);
        } catch (IOException | UnsupportedOperationException noLinks) {
            Needed.here(false, "links");
        }
        new SafeFile(link).replace(out -> out.write(bytes("new")));
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("new", Files.readString(file));
    }

    @Test
    void replace_existingFile_isKeptAsABackup() throws IOException {
        Path file = folder.resolve("bag.xlsx");
        assertEquals(Optional.empty(), new SafeFile(file).replace(out -> out.write(bytes("one"))));
        KeptFile kept =
                new SafeFile(file).replace(out -> out.write(bytes("two"))).orElseThrow();
        assertEquals("one", Files.readString(kept.backup()));
        assertEquals(0, kept.removed());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void replace_emptyFile_isKeptAsABackupToo() throws IOException {
        Path file = Files.createFile(folder.resolve("bag.xlsx"));
        Path backup = new SafeFile(file)
                .replace(out -> out.write(bytes("new")))
                .orElseThrow()
                .backup();
        assertEquals(0, Files.size(backup));
        assertEquals("new", Files.readString(file));
    }

    @Test
    void requireWritable_bookOpenElsewhere_isRefusedBeforeAnyWork() throws IOException {
        Path file = Files.writeString(folder.resolve("bag.xlsx"), "old");
        new SafeFile(file).requireWritable();
        Files.writeString(folder.resolve(".~lock.bag.xlsx#"), "Golfer A");
        assertThrows(OpenElsewhereException.class, () -> new SafeFile(file).requireWritable());
    }
}
