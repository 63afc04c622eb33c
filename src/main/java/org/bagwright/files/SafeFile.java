package org.bagwright.files;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;

/** Writes files so that a reader sees the old one or the new one whole, whatever happens in between. */
public final class SafeFile {
    /** Writes a file's content. */
    @FunctionalInterface
    public interface IoWriter {
        /** Writes everything; the stream is closed by the caller. */
        void writeTo(OutputStream out) throws IOException;
    }

    private SafeFile() {}

    /**
     * Writes a file under a temporary name in the same folder, readable by its owner only, forces it to the disk, keeps
     * what stands in its place as a backup and then gives it its name in one step. It has the access rights of the file
     * it replaces; a new one stays its owner's. A link is followed. When anything fails the old file is untouched and
     * the temporary one is gone.
     *
     * @return the backup, if there was anything to keep
     * @throws OpenElsewhereException if the file is open in another program, or written by one meanwhile
     * @throws IOException if the file cannot be written, saying why in plain words, or whatever {@code writer} throws
     */
    public static Optional<KeptFile> replace(Path target, IoWriter writer) throws IOException {
        return replace(target, writer, true);
    }

    /**
     * As {@link #replace} without a backup, where nothing stands but what the program itself wrote there last.
     *
     * @throws IOException as {@link #replace}
     */
    public static void replaceOwn(Path target, IoWriter writer) throws IOException {
        replace(target, writer, false);
    }

    private static Optional<KeptFile> replace(Path target, IoWriter writer, boolean keep) throws IOException {
        requireWritable(target);
        Path real = real(target);
        Optional<Path> backup;
        try (TemporaryFile fresh = inWords(target, () -> TemporaryFile.in(real.getParent()))) {
            write(target, fresh, writer);
            fresh.removeLeftBehind();
            OtherProgram.refuse(target);
            backup = inWords(target, () -> put(fresh, real, keep));
        }
        forceFolder(real.getParent());
        return backup.map(kept -> new KeptFile(kept, new Backups(real).removeOlder()));
    }

    private static Optional<Path> put(TemporaryFile fresh, Path real, boolean keep) throws IOException {
        FileMark before = FileMark.of(real);
        Optional<Path> backup = Optional.empty();
        if (!before.isNone()) {
            FileRights.keep(real, fresh.path());
        }
        if (!before.isNone() && keep) {
            backup = Optional.of(new Backups(real).make(LocalDateTime.now(ZoneId.systemDefault())));
            forceFolder(real.getParent());
        }
        before.requireSame(real);
        fresh.replace(real);
        return backup;
    }

    /** As {@link #replace} without a backup, for what the program has made and can make again. */
    public static void overwrite(Path target, IoWriter writer) throws IOException {
        Path real = real(target);
        try (TemporaryFile fresh = TemporaryFile.in(real.getParent())) {
            fresh.write(writer);
            if (Files.exists(real)) {
                FileRights.keep(real, fresh.path());
            }
            fresh.replace(real);
        }
    }

    /**
     * Writes a file whose name must be free, in the same way.
     *
     * @throws IOException if there is such a file by now, or as {@link #replace}
     */
    public static void create(Path target, IoWriter writer) throws IOException {
        requireWritable(target);
        Path real = target.toAbsolutePath();
        try (TemporaryFile fresh = inWords(target, () -> TemporaryFile.in(real.getParent()))) {
            write(target, fresh, writer);
            fresh.removeLeftBehind();
            inWords(target, () -> {
                fresh.become(real);
                return real;
            });
        }
        forceFolder(real.getParent());
    }

    /**
     * Tells before any work is done whether a file can be written, as far as that can be known.
     *
     * @throws OpenElsewhereException if it is open in another program
     * @throws IOException if not, saying why and what to do in plain words
     */
    public static void requireWritable(Path target) throws IOException {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || Files.isDirectory(target)) {
            throw NotWrittenException.because(target, "this is a folder. Give the name of a file.");
        }
        if (!Files.isDirectory(folder)) {
            throw NotWrittenException.because(
                    target, "there is no folder " + folder + ". Create it, or give another" + " folder.");
        }
        if (!Files.exists(target) && Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            throw NotWrittenException.because(target, "this is a broken link. Choose another name for the result.");
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw NotWrittenException.because(target, "this is not a regular file. Choose another name.");
        }
        Path realFolder = Files.exists(target) ? target.toRealPath().getParent() : folder;
        if (!Files.isWritable(realFolder)) {
            throw NotWrittenException.because(target, NotWrittenException.noRight(realFolder));
        }
        OtherProgram.refuse(target);
        if (Files.exists(target) && FileRights.isProtected(target)) {
            throw NotWrittenException.because(
                    target,
                    "the file is write-protected. Remove the write protection, or choose another name for the result.");
        }
    }

    private static Path real(Path target) throws IOException {
        return Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
    }

    /** A fault of the disk is put into words; what else the writer throws is its own. */
    private static void write(Path target, TemporaryFile fresh, IoWriter writer) throws IOException {
        try {
            fresh.write(writer);
        } catch (TemporaryFile.DiskFault fault) {
            throw NotWrittenException.of(target, fault.fault());
        }
    }

    private interface Step<T> {
        T run() throws IOException;
    }

    private static <T> T inWords(Path target, Step<T> step) throws IOException {
        try {
            return step.run();
        } catch (OpenElsewhereException known) {
            throw known;
        } catch (FileAlreadyExistsException taken) {
            throw NotWrittenException.because(target, taken.getFile() + " already exists.");
        } catch (TemporaryFile.DiskFault fault) {
            throw NotWrittenException.of(target, fault.fault());
        } catch (IOException fault) {
            Optional<OpenElsewhereException> open = OtherProgram.from(target, fault);
            throw open.isPresent() ? open.get() : NotWrittenException.of(target, fault);
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
