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
 * What identifies a version of a file without reading it.
 *
 * @param key how the system identifies it, different after another file was renamed over it; null where it has no such thing
 * @param sizeBytes its size; below zero where there is no file
 * @param written when it was last written
 */
record FileMark(Object key, long sizeBytes, FileTime written) {
    private static final FileMark NONE = new FileMark(null, -1, FileTime.fromMillis(0));

    static FileMark of(Path file) throws IOException {
        try {
            BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
            return new FileMark(found.fileKey(), found.size(), found.lastModifiedTime());
        } catch (NoSuchFileException none) {
            return NONE;
        }
    }

    /** The mark of a file, or nothing where there is none or it cannot be read. */
    static Optional<FileMark> seen(Path file) {
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
            throw new OtherProgram(file).changedMeanwhile();
        }
    }
}
