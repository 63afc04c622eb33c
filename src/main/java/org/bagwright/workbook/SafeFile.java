package org.bagwright.workbook;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Writes files so that a reader sees the old one or the new one whole, whatever happens in between. */
public final class SafeFile {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT);
    private static final int MOST_BACKUPS_A_SECOND = 100;

    /** Writes a file's content. */
    @FunctionalInterface
    public interface IoWriter {
        /** Writes everything; the stream is closed by the caller. */
        void writeTo(OutputStream out) throws IOException;
    }

    private SafeFile() {}

    /**
     * Writes a file under a temporary name in the same folder, readable by its owner only, forces it to the disk and then
     * gives it its name in one step. An existing file is replaced and keeps its access rights; a new one stays its
     * owner's. A link is followed. When anything fails the old file is untouched and the temporary one is gone.
     *
     * @throws IOException if the file cannot be written, or whatever {@code writer} throws
     */
    public static void replace(Path target, IoWriter writer) throws IOException {
        Path real = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
        Path temporary = Files.createTempFile(real.getParent(), ".bagwright-", ".tmp");
        try {
            writeForced(temporary, writer);
            keepRights(real, temporary);
            move(temporary, real);
        } finally {
            Files.deleteIfExists(temporary);
        }
        forceFolder(real.getParent());
    }

    /**
     * Copies a file beside itself, as {@code bag.backup-20260131-120000.xlsx} for {@code bag.xlsx}.
     *
     * @return the copy
     * @throws IOException if there is no such file or it cannot be copied
     */
    public static Path backup(Path file) throws IOException {
        return backup(file, LocalDateTime.now(java.time.ZoneId.systemDefault()));
    }

    static Path backup(Path file, LocalDateTime when) throws IOException {
        FileAlreadyExistsException taken = new FileAlreadyExistsException(file.toString());
        for (int copy = 1; copy <= MOST_BACKUPS_A_SECOND; copy++) {
            Path backup = file.resolveSibling(backupName(file.getFileName().toString(), when, copy));
            try {
                return Files.copy(file, backup, StandardCopyOption.COPY_ATTRIBUTES);
            } catch (FileAlreadyExistsException thisOne) {
                taken = thisOne;
            }
        }
        throw taken;
    }

    private static String backupName(String name, LocalDateTime when, int copy) {
        int dot = name.lastIndexOf('.');
        int end = dot > 0 ? dot : name.length();
        String again = copy == 1 ? "" : "-" + copy;
        return name.substring(0, end) + ".backup-" + STAMP.format(when) + again + name.substring(end);
    }

    private static void writeForced(Path temporary, IoWriter writer) throws IOException {
        try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE);
                OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel), 1 << 16)) {
            writer.writeTo(out);
            out.flush();
            channel.force(true);
        }
    }

    private static void keepRights(Path old, Path temporary) throws IOException {
        PosixFileAttributeView rights = Files.getFileAttributeView(temporary, PosixFileAttributeView.class);
        if (rights != null && Files.exists(old)) {
            rights.setPermissions(Files.getPosixFilePermissions(old));
        }
    }

    private static void move(Path temporary, Path target) throws IOException {
        try {
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException notHere) {
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Forces the new name to the disk where the system lets a folder be opened, as Windows does not. */
    private static void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notPossible) {
            // The content itself is already on the disk; only the renaming may be lost with the power.
        }
    }
}
