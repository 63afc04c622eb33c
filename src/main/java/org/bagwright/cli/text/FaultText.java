package org.bagwright.cli.text;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/**
 * A fault in words.
 *
 * @param fault what went wrong
 */
public record FaultText(Throwable fault) {

    public String sentence() {
        Throwable first = fault;
        while (first.getCause() != null) {
            first = first.getCause();
        }
        if (first instanceof OutOfMemoryError) {
            return "there is not enough memory for this work, so it was not finished. No book was changed. Use a machine"
                    + " with more memory, or split the book.";
        }
        if (first instanceof StackOverflowError) {
            return "something is nested too deeply for this program, so the work was not finished. No book was changed.";
        }
        return ofException();
    }

    private String ofException() {
        if (fault instanceof AccessDeniedException denied) {
            return denied.getFile() + ": no permission to write here";
        }
        if (fault instanceof NoSuchFileException missing) {
            return missing.getFile() + ": there is no such file or folder";
        }
        if (fault instanceof FileSystemException system) {
            return system.getFile() + ": "
                    + (system.getReason() == null ? "the system could not read or write it" : system.getReason());
        }
        if (fault instanceof IOException) {
            return fault.getMessage() == null ? fault.toString() : fault.getMessage();
        }
        return "a fault of the program, not of your book: " + fault + place();
    }

    private String place() {
        StackTraceElement[] trace = fault.getStackTrace();
        return trace.length == 0 ? "" : " at " + trace[0];
    }
}
