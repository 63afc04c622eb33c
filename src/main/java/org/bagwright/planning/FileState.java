package org.bagwright.planning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/**
 * By what a saved file is told from the one before, without reading it.
 *
 * @param sizeBytes its size
 * @param changed when it was written
 * @param key what the system knows it by, where it has such a thing; another one after a renaming over it
 */
record FileState(long sizeBytes, FileTime changed, Optional<Object> key) {

    /** The state of a file, or nothing where there is none or it cannot be asked. */
    static Optional<FileState> of(Path file) {
        try {
            BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
            return Optional.of(
                    new FileState(found.size(), found.lastModifiedTime(), Optional.ofNullable(found.fileKey())));
        } catch (IOException missing) {
            return Optional.empty();
        }
    }
}
