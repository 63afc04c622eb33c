package org.bagwright.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Objects;

/** By what a file is known again: which one it is, its size and when it was last written. */
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

    boolean isNone() {
        return sizeBytes < 0;
    }

    void requireSame(Path file) throws IOException {
        if (!Objects.equals(this, of(file))) {
            throw OtherProgram.changedMeanwhile(file);
        }
    }
}
