package org.bagwright.files;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A file under a name of its own that becomes another file in one step once it is whole and on the disk. Only its owner
 * may read it, and it is locked while it is written, so that another run can tell it from one that a killed run left.
 */
final class TemporaryFile implements Closeable {
    private static final int BUFFER_BYTES = 1 << 16;

    private final Path path;
    private final FileChannel channel;
    private final DiskCalls disk;

    private TemporaryFile(Path path, FileChannel channel, DiskCalls disk) {
        this.path = path;
        this.channel = channel;
        this.disk = disk;
    }

    /** Makes an empty one. */
    static TemporaryFile in(Path folder, DiskCalls disk) throws IOException {
        Path path = Files.createTempFile(folder, LeftBehind.START, LeftBehind.END);
        path.toFile().deleteOnExit();
        FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE);
        lock(channel);
        return new TemporaryFile(path, channel, disk);
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

    /** Writes everything and forces it to the disk; a fault of the disk is a {@link DiskFault}, however a library wraps it. */
    void write(ContentWriter writer) throws IOException {
        Disk watched = new Disk(Channels.newOutputStream(channel));
        try {
            BufferedOutputStream out = new BufferedOutputStream(watched, BUFFER_BYTES);
            writer.writeTo(out);
            out.flush();
        } catch (IOException | RuntimeException failed) {
            if (watched.fault != null) {
                throw new DiskFault(watched.fault);
            }
            throw failed;
        }
        force();
    }

    private void force() throws DiskFault {
        try {
            disk.force(channel);
        } catch (IOException failed) {
            throw new DiskFault(failed);
        }
    }

    /** Takes the place of a file in the same folder, in one step. */
    void replace(Path target) throws IOException {
        channel.close();
        disk.replace(path, target);
    }

    /**
     * Takes a name that is free.
     *
     * @throws FileAlreadyExistsException if it is not free
     */
    void become(Path target) throws IOException {
        channel.close();
        try {
            disk.link(target, path);
        } catch (FileAlreadyExistsException taken) {
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
