package org.bagwright.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Objects;
import java.util.Optional;

/**
 * By what a file is known again without reading it.
 *
 * @param key what the system knows it by, another one after a renaming over it; null where it has no such thing
 * @param sizeBytes its size; below zero where there is no file
 * @param written when it was last written
 */
public record FileMark(Object key, long sizeBytes, FileTime written) {
    private static final FileMark NONE = new FileMark(null, -1, FileTime.fromMillis(0));

    static FileMark of(Path file) throws IOException {
        try {
            BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
            return new FileMark(found.fileKey(), found.size(), found.lastModifiedTime());
        } catch (NoSuchFileException none) {
            return NONE;
        }
    }

    /** The mark of a file, or nothing where there is none or it cannot be asked. */
    public static Optional<FileMark> seen(Path file) {
        try {
            return Optional.of(of(file)).filter(mark -> !mark.isNone());
        } catch (IOException cannot) {
            return Optional.empty();
        }
    }

    boolean isNone() {
        return sizeBytes < 0;
    }

    void requireSame(Path file) throws IOException {
        if (!Objects.equals(this, of(file))) {
            throw OtherProgram.changedMeanwhile(file);
        }
    }
}
