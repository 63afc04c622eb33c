package org.bagwright.files;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;

/** A file to write so that a reader sees the old one or the new one whole, whatever happens in between. */
public final class SafeFile {
    private final Path target;
    private final DiskCalls disk;

    public SafeFile(Path target) {
        this(target, new DiskCalls());
    }

    SafeFile(Path target, DiskCalls disk) {
        this.target = target;
        this.disk = disk;
    }

    /**
     * Writes the file under a temporary name in the same folder, readable by its owner only, forces it to the disk, keeps
     * the file that it replaces as a backup and then gives it its name in one step. It has the access rights of the file
     * it replaces; a new one stays its owner's. A link is followed. When anything fails the old file is untouched and
     * the temporary one is gone.
     *
     * @return the backup, if there was anything to keep
     * @throws OpenElsewhereException if the file is open in another program, or written by one at the same time
     * @throws IOException if the file cannot be written, saying why in plain words, or whatever {@code writer} throws
     */
    public Optional<KeptFile> replace(ContentWriter writer) throws IOException {
        return replace(writer, true, () -> {});
    }

    /**
     * As {@link #replace(ContentWriter)} for what was made from other files, which may have changed since.
     *
     * @param source compared last before the new file gets its name
     * @throws SavedMeanwhileException if the source has changed; then nothing is written
     * @throws IOException as {@link #replace(ContentWriter)}
     */
    public Optional<KeptFile> replace(ContentWriter writer, SourceFile source) throws IOException {
        return replace(writer, true, source::requireUnchanged);
    }

    /**
     * As {@link #replace(ContentWriter)} without a backup, where there is only what the program itself wrote there last.
     *
     * @throws IOException as {@link #replace(ContentWriter)}
     */
    public void replaceOwn(ContentWriter writer) throws IOException {
        replace(writer, false, () -> {});
    }

    private interface Check {
        void run() throws IOException;
    }

    private Optional<KeptFile> replace(ContentWriter writer, boolean keep, Check source) throws IOException {
        requireWritable();
        Path real = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
        Optional<Path> backup;
        try (TemporaryFile fresh = temporary(real)) {
            write(fresh, writer);
            new OtherProgram(target).refuse();
            backup = inWords(() -> put(fresh, real, keep, source));
        }
        disk.forceFolder(real.getParent());
        return backup.map(kept -> new KeptFile(kept, new Backups(real, disk).removeOlder()));
    }

    private Optional<Path> put(TemporaryFile fresh, Path real, boolean keep, Check source) throws IOException {
        FileMark before = FileMark.of(real);
        source.run();
        Optional<Path> backup = Optional.empty();
        if (!before.isNone()) {
            new FileLabels(real).giveTo(fresh.path());
            FileRights.of(real).giveTo(fresh.path());
        }
        if (!before.isNone() && keep) {
            backup = Optional.of(new Backups(real, disk).make(LocalDateTime.now(ZoneId.systemDefault())));
            disk.forceFolder(real.getParent());
        }
        before.requireSame(real);
        fresh.replace(real);
        return backup;
    }

    /**
     * Writes the file under a name that must be free, in the same way.
     *
     * @throws IOException if there is such a file by now, or as {@link #replace(ContentWriter)}
     */
    public void create(ContentWriter writer) throws IOException {
        requireWritable();
        Path real = target.toAbsolutePath();
        try (TemporaryFile fresh = temporary(real)) {
            write(fresh, writer);
            inWords(() -> {
                fresh.become(real);
                return real;
            });
        }
        disk.forceFolder(real.getParent());
    }

    /**
     * Checks before any work is done whether the file can be written, as far as that can be known.
     *
     * @throws OpenElsewhereException if it is open in another program
     * @throws IOException if not, saying why and what to do in plain words
     */
    public void requireWritable() throws IOException {
        requirePlace(target.toAbsolutePath().getParent());
        boolean exists = Files.exists(target);
        Path folder = (exists ? target.toRealPath() : target.toAbsolutePath()).getParent();
        if (!Files.isWritable(folder)) {
            throw NotWrittenException.because(target, NotWrittenException.noRight(folder));
        }
        new OtherProgram(target).refuse();
        if (exists && FileRights.isProtected(target)) {
            throw NotWrittenException.because(
                    target,
                    "the file is write-protected. Remove the write protection, or choose another name for the result.");
        }
    }

    private void requirePlace(Path folder) throws IOException {
        if (folder == null || Files.isDirectory(target)) {
            throw NotWrittenException.because(target, "this is a folder. Give the name of a file.");
        }
        if (!Files.isDirectory(folder)) {
            throw NotWrittenException.because(
                    target, "there is no folder " + folder + ". Create it, or give another folder.");
        }
        if (!Files.exists(target) && Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            throw NotWrittenException.because(target, "this is a broken link. Choose another name for the result.");
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw NotWrittenException.because(target, "this is not a regular file. Choose another name.");
        }
    }

    private TemporaryFile temporary(Path real) throws IOException {
        return inWords(() -> TemporaryFile.in(real.getParent(), disk));
    }

    /** A fault of the disk is put into words; what else the writer throws is its own. */
    private void write(TemporaryFile fresh, ContentWriter writer) throws IOException {
        try {
            fresh.write(writer);
        } catch (DiskFault fault) {
            throw NotWrittenException.of(target, fault.fault());
        }
        new LeftBehind(fresh.path()).remove();
    }

    private interface Step<T> {
        T run() throws IOException;
    }

    private <T> T inWords(Step<T> step) throws IOException {
        try {
            return step.run();
        } catch (OpenElsewhereException | SavedMeanwhileException known) {
            throw known;
        } catch (FileAlreadyExistsException taken) {
            throw NotWrittenException.because(target, taken.getFile() + " already exists.");
        } catch (DiskFault fault) {
            throw NotWrittenException.of(target, fault.fault());
        } catch (IOException fault) {
            Optional<OpenElsewhereException> open = new OtherProgram(target).from(fault);
            throw open.isPresent() ? open.get() : NotWrittenException.of(target, fault);
        }
    }
}
