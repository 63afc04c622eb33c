package org.bagwright.files;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.regex.Pattern;

/**
 * A file under a name of its own that becomes another file in one step once it is whole and on the disk. Only its owner
 * may read it, and it is locked while it is written, so that another run can tell it from one that a killed run left.
 */
final class TemporaryFile implements Closeable {
    /** How old a file must be, by the clock of its own disk, to count as left behind. */
    static final Duration LEFT_BEHIND = Duration.ofHours(1);

    private static final String START = ".bagwright-";
    private static final String END = ".tmp";
    private static final Pattern NAME = Pattern.compile(Pattern.quote(START) + "\\d+" + Pattern.quote(END));
    private static final int BUFFER_BYTES = 1 << 16;

    private final Path path;
    private final FileChannel channel;

    private TemporaryFile(Path path, FileChannel channel) {
        this.path = path;
        this.channel = channel;
    }

    /** Makes an empty one. */
    static TemporaryFile in(Path folder) throws IOException {
        Path path = Files.createTempFile(folder, START, END);
        path.toFile().deleteOnExit();
        FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE);
        lock(channel);
        return new TemporaryFile(path, channel);
    }

    /** Where the disk knows no locks, no other run can get one either, and so none removes this file. */
    @SuppressWarnings("try")
    private static void lock(FileChannel channel) {
        try {
            channel.tryLock();
        } catch (IOException noLocks) {
            return;
        }
    }

    Path path() {
        return path;
    }

    /** Writes everything and forces it to the disk; a fault of the disk is told apart, however a library wraps it. */
    void write(SafeFile.IoWriter writer) throws IOException {
        Disk disk = new Disk(Channels.newOutputStream(channel));
        try {
            BufferedOutputStream out = new BufferedOutputStream(disk, BUFFER_BYTES);
            writer.writeTo(out);
            out.flush();
        } catch (IOException | RuntimeException failed) {
            if (disk.fault != null) {
                throw new DiskFault(disk.fault);
            }
            throw failed;
        }
        force();
    }

    private void force() throws DiskFault {
        try {
            channel.force(true);
        } catch (IOException failed) {
            throw new DiskFault(failed);
        }
    }

    /** Takes the place of a file in the same folder, in one step. */
    void replace(Path target) throws IOException {
        channel.close();
        Files.move(path, target, StandardCopyOption.ATOMIC_MOVE);
    }

    /**
     * Takes a name that is free.
     *
     * @throws java.nio.file.FileAlreadyExistsException if it is not free
     */
    void become(Path target) throws IOException {
        channel.close();
        try {
            Files.createLink(target, path);
        } catch (java.nio.file.FileAlreadyExistsException taken) {
            throw taken;
        } catch (IOException | UnsupportedOperationException noLinks) {
            Files.move(path, target);
        }
    }

    /** Removes it where it has not taken another name. */
    @Override
    public void close() {
        try {
            channel.close();
            Files.deleteIfExists(path);
        } catch (IOException stays) {
            // The next run in this folder removes it.
        }
    }

    /** Removes what killed runs have left in this file's folder: by name, owner, age and lock surely ours and unused. */
    void removeLeftBehind() {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(path.getParent(), START + "*" + END)) {
            FileTime now = Files.getLastModifiedTime(path);
            for (Path file : files) {
                if (NAME.matcher(file.getFileName().toString()).matches() && isLeftBehind(file, now)) {
                    removeUnlocked(file);
                }
            }
        } catch (IOException | java.nio.file.DirectoryIteratorException notListed) {
            // Tidying may fail; what is written does not depend on it.
        }
    }

    private boolean isLeftBehind(Path file, FileTime now) throws IOException {
        if (file.equals(path) || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        Duration age = Duration.between(Files.getLastModifiedTime(file).toInstant(), now.toInstant());
        return age.compareTo(LEFT_BEHIND) > 0 && Files.getOwner(file).equals(Files.getOwner(path));
    }

    private static void removeUnlocked(Path file) {
        try (FileChannel unused = FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
                FileLock lock = unused.tryLock()) {
            if (lock != null) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | OverlappingFileLockException inUse) {
            // Not surely unused, so it stays.
        }
    }

    /** The disk did not take what was written, as against a fault of whoever writes. */
    static final class DiskFault extends IOException {
        private static final long serialVersionUID = 1;

        DiskFault(IOException fault) {
            super(fault.getMessage(), fault);
        }

        IOException fault() {
            return (IOException) getCause();
        }
    }

    /** Remembers the fault of the disk, since a library above may wrap it or say less. */
    private static final class Disk extends FilterOutputStream {
        private IOException fault;

        Disk(OutputStream out) {
            super(out);
        }

        @Override
        public void write(int value) throws IOException {
            write(new byte[] {(byte) value}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) throws IOException {
            try {
                out.write(bytes, offset, length);
            } catch (IOException failed) {
                fault = failed;
                throw failed;
            }
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }
}
