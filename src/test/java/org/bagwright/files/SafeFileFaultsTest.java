package org.bagwright.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserDefinedFileAttributeView;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bagwright.Needed;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever goes wrong, the old file stays whole, nothing is left, and the words say what to do. */
@Tag("analytic")
class SafeFileFaultsTest {
    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void book() throws IOException {
        file = Files.writeString(folder.resolve("bag.xlsx"), "old");
    }

    private String refused(Class<? extends IOException> kind, Path target) throws IOException {
        List<Path> before = files();
        IOException fault = assertThrows(kind, () -> new SafeFile(target).replace(out -> out.write(bytes("new"))));
        assertEquals("old", Files.readString(file));
        assertEquals(before, files());
        return fault.getMessage();
    }

    @Test
    void writeProtected_isRefusedWhoeverAsks() throws IOException {
        Needed.posix(folder);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        assertTrue(refused(NotWrittenException.class, file).contains("write-protected"));
    }

    @Test
    void placesThatAreNoFile_areRefusedInWords() throws IOException {
        Path loop = folder.resolve("loop.xlsx");
        Files.createSymbolicLink(loop, loop);
        Path nowhere = Files.createSymbolicLink(folder.resolve("nowhere.xlsx"), folder.resolve("none"));
        assertTrue(refused(NotWrittenException.class, folder).contains("is a folder"));
        assertTrue(refused(NotWrittenException.class, loop).contains("broken link"));
        assertTrue(refused(NotWrittenException.class, nowhere).contains("broken link"));
        assertTrue(refused(NotWrittenException.class, folder.resolve("gone/bag.xlsx"))
                .contains("no folder"));
        assertTrue(refused(NotWrittenException.class, file.resolve("bag.xlsx")).contains("no folder"));
        assertTrue(Files.isSymbolicLink(nowhere));
    }

    @Test
    void folderGoneWhileWriting_saysSo() throws IOException {
        Path gone = Files.createDirectories(folder.resolve("gone"));
        IOException fault =
                assertThrows(NotWrittenException.class, () -> new SafeFile(gone.resolve("bag.xlsx")).replace(out -> {
                    out.write(bytes("new"));
                    for (Path inside : list(gone)) {
                        Files.delete(inside);
                    }
                    Files.delete(gone);
                }));
        assertTrue(fault.getMessage().contains("is gone"), fault.getMessage());
    }

    @Test
    void folderOfTheSystem_takesNoFiles() {
        Needed.linux();
        String said = assertThrows(NotWrittenException.class, () -> new SafeFile(Path.of("/proc/x.xlsx"))
                        .replace(out -> out.write(bytes("new"))))
                .getMessage();
        assertTrue(said.contains("the folder /proc") && !said.contains("full"), said);
    }

    @Test
    void extendedAttributes_areKept() throws IOException {
        Path file = Files.write(folder.resolve("labelled.xlsx"), bytes("old"));
        UserDefinedFileAttributeView labels = Files.getFileAttributeView(file, UserDefinedFileAttributeView.class);
        Needed.labels(file);
        labels.write("tag", ByteBuffer.wrap(bytes("club")));
        new SafeFile(file).replace(out -> out.write(bytes("new")));
        ByteBuffer value = ByteBuffer.allocate(labels.size("tag"));
        labels.read("tag", value);
        assertArrayEquals(bytes("club"), value.array());
        assertArrayEquals(bytes("new"), Files.readAllBytes(file));
    }

    @Test
    void hardLink_keepsTheOldContent() throws IOException {
        Path file = Files.write(folder.resolve("linked.xlsx"), bytes("old"));
        Path second = Files.createLink(folder.resolve("second.xlsx"), file);
        new SafeFile(file).replace(out -> out.write(bytes("new")));
        assertArrayEquals(bytes("old"), Files.readAllBytes(second));
        assertArrayEquals(bytes("new"), Files.readAllBytes(file));
    }

    @Test
    void ownersFileOfEitherKind_isRefusedAndNamed() throws IOException {
        for (String owner : List.of("~$bag.xlsx", ".~lock.bag.xlsx#")) {
            Path lockFile = Files.writeString(folder.resolve(owner), "Golfer A");
            String said = refused(OpenElsewhereException.class, file);
            assertTrue(said.contains("open in another program") && said.contains("delete " + lockFile), said);
            Files.delete(lockFile);
        }
        assertTrue(new SafeFile(file).replace(out -> out.write(bytes("new"))).isPresent());
    }

    @Test
    void ownersFile_besideTheFileThatALinkMeans_isFound() throws IOException {
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        Path link = Files.createSymbolicLink(elsewhere.resolve("link.xlsx"), file);
        Files.writeString(folder.resolve("~$bag.xlsx"), "Golfer A");
        assertTrue(refused(OpenElsewhereException.class, link).contains("~$bag.xlsx"));
    }

    @Test
    void ownersFile_thatAppearsWhileWriting_isRefused() throws IOException {
        assertThrows(OpenElsewhereException.class, () -> new SafeFile(file).replace(out -> {
            out.write(bytes("new"));
            Files.writeString(folder.resolve("~$bag.xlsx"), "Golfer A");
        }));
        assertEquals("old", Files.readString(file));
        assertEquals(2, files().size(), files().toString());
    }

    @Test
    void lockedFile_isRefused() throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
                FileLock lock = channel.lock()) {
            assertTrue(lock.isValid());
            assertTrue(refused(OpenElsewhereException.class, file).contains("open and locked"));
        }
    }

    /** What another program saves while the result is written is what the backup holds. */
    @Test
    void savedByAnotherProgramWhileWriting_isKeptAsTheBackup() throws IOException {
        Path backup = new SafeFile(file)
                .replace(out -> {
                    out.write(bytes("new"));
                    Files.writeString(file, "saved meanwhile");
                })
                .orElseThrow()
                .backup();
        assertEquals("new", Files.readString(file));
        assertEquals("saved meanwhile", Files.readString(backup));
    }

    @Test
    void changedSinceItWasLookedAt_isRefused() throws IOException {
        FileMark before = FileMark.of(file);
        before.requireSame(file);
        Files.writeString(file, "longer than old");
        assertThrows(OpenElsewhereException.class, () -> before.requireSame(file));
        Files.delete(file);
        assertThrows(OpenElsewhereException.class, () -> before.requireSame(file));
        FileMark.of(file).requireSame(file);
    }

    /** Where a clock is coarse, the size or the file itself tells. */
    @Test
    void changedWithinATickOfTheClock_isRefused() throws IOException {
        FileTime time = FileTime.fromMillis(0);
        Files.setLastModifiedTime(file, time);
        FileMark before = FileMark.of(file);
        Files.setLastModifiedTime(Files.writeString(file, "longer than old"), time);
        assertThrows(OpenElsewhereException.class, () -> before.requireSame(file));
        Path other = Files.setLastModifiedTime(Files.writeString(folder.resolve("other"), "new"), time);
        new DiskCalls().replace(other, file);
        assertEquals(before.sizeBytes(), Files.size(file));
        assertThrows(OpenElsewhereException.class, () -> before.requireSame(file));
    }

    /** A library may say of a full disk only that it failed; the disk's own fault counts. */
    @Test
    @SuppressWarnings("try")
    void faultOfTheDisk_isToldApartHoweverItIsWrapped() throws IOException {
        try (TemporaryFile temporary = TemporaryFile.in(folder, new DiskCalls())) {
            DiskFault fault = assertThrows(
                    DiskFault.class,
                    () -> temporary.write(out -> {
                        temporary.close();
                        try {
                            out.write(new byte[1 << 20]);
                        } catch (IOException failed) {
                            throw new IllegalStateException("fail to save", failed);
                        }
                    }));
            assertTrue(fault.getCause() instanceof java.nio.channels.ClosedChannelException);
        }
    }

    @Test
    void faultsOfTheSystem_inWords() {
        assertTrue(words(new IOException("No space left on device")).contains("the disk is full"));
        assertTrue(
                words(new IOException("There is not enough space on the disk")).contains("the disk is full"));
        assertTrue(words(new IOException("Disk quota exceeded")).contains("the disk is full"));
        assertTrue(words(new FileSystemException("a", null, "Read-only file system"))
                .contains("no permission to write"));
        assertTrue(words(new AccessDeniedException("a")).contains("Close the file if it is open"));
        assertTrue(
                words(new FileSystemException("a", null, "Too many open files")).contains("Too many open files"));
    }

    private String words(IOException fault) {
        String said = NotWrittenException.of(file, fault).getMessage();
        assertTrue(said.startsWith(file + " was not written: "), said);
        return said;
    }

    @Test
    void lockOfWindows_isABookThatIsOpenElsewhere() {
        FileSystemException locked = new FileSystemException(
                "bag.xlsx", "x.tmp", "The process cannot access the file because it is being used by another process");
        assertTrue(
                new OtherProgram(file).from(locked).orElseThrow().getMessage().contains("Close it there"));
        assertEquals(
                Optional.empty(),
                new OtherProgram(file).from(new FileSystemException("a", null, "Input/output error")));
    }

    @Test
    void create_nameTakenMeanwhile_leavesTheOther() throws IOException {
        Path fresh = folder.resolve("fresh.xlsx");
        assertThrows(NotWrittenException.class, () -> new SafeFile(fresh).create(out -> {
            out.write(bytes("ours"));
            Files.writeString(fresh, "theirs");
        }));
        assertEquals("theirs", Files.readString(fresh));
        assertEquals(2, files().size(), files().toString());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private List<Path> files() throws IOException {
        return list(folder);
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
