package org.bagwright.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileStore;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;

/** A file could not be written; the message says in plain words why and what to do. The old file is unchanged. */
final class NotWrittenException extends IOException {
    private static final long serialVersionUID = 1;
    private static final long FULL_BELOW_BYTES = 64 << 10;
    private static final Pattern FULL = Pattern.compile("(?i).*(no space left|not enough space|quota exceeded).*");
    private static final Pattern TOO_LARGE = Pattern.compile("(?i).*file too large.*");
    private static final Pattern PROTECTED = Pattern.compile("(?i).*(read-only file system|write.protected).*");

    private NotWrittenException(String message, IOException cause) {
        super(message, cause);
    }

    static NotWrittenException because(Path target, String why) {
        return new NotWrittenException(target + " was not written: " + why, null);
    }

    /** The system's own fault in words for people. */
    static NotWrittenException of(Path target, IOException fault) {
        if (fault instanceof NotWrittenException inWords) {
            return inWords;
        }
        return new NotWrittenException(target + " was not written: " + why(target.toAbsolutePath(), fault), fault);
    }

    private static String why(Path target, IOException fault) {
        Path folder = target.getParent();
        String message = String.valueOf(fault.getMessage());
        if (!Files.isDirectory(folder)) {
            return "the folder " + folder + " is gone. Create it again, or choose another place for the result.";
        }
        if (FULL.matcher(message).matches() || isFull(folder)) {
            return "the disk is full. The old file is unchanged. Free some space, or choose a place on another"
                    + " disk for the result, then try again.";
        }
        if (TOO_LARGE.matcher(message).matches()) {
            return "the result is larger than the system lets this user write into one file (its limit is shown by ulimit"
                    + " -f). The old file is unchanged. Raise the limit, then try again.";
        }
        return PROTECTED.matcher(message).matches() ? noRight(folder) : why(folder, fault, message);
    }

    private static String why(Path folder, IOException fault, String message) {
        if (fault instanceof AccessDeniedException) {
            return "the system does not allow it. Close the file if it is open, and check that you may write to the"
                    + " folder " + folder + ", or choose another place for the result.";
        }
        if (fault instanceof NoSuchFileException) {
            return "the folder " + folder + " takes no new files. Choose another place for the result.";
        }
        return Optional.of(fault)
                .filter(FileSystemException.class::isInstance)
                .map(system -> ((FileSystemException) system).getReason())
                .orElse(message);
    }

    static String noRight(Path folder) {
        return "you have no permission to write to the folder " + folder
                + ". Change its permissions, or choose another place for the result.";
    }

    private static boolean isFull(Path folder) {
        try {
            FileStore disk = Files.getFileStore(folder);
            return disk.getTotalSpace() > 0 && disk.getUsableSpace() < FULL_BELOW_BYTES;
        } catch (IOException unknown) {
            return false;
        }
    }
}
