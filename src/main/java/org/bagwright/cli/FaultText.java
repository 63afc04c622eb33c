package org.bagwright.cli;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** A fault in words. */
final class FaultText {
    private FaultText() {}

    static String of(Throwable fault) {
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
        if (fault instanceof java.io.IOException) {
            return fault.getMessage() == null ? fault.toString() : fault.getMessage();
        }
        return "a fault of the program, not of your book: " + fault + at(fault);
    }

    private static String at(Throwable fault) {
        StackTraceElement[] trace = fault.getStackTrace();
        return trace.length == 0 ? "" : " at " + trace[0];
    }
}
