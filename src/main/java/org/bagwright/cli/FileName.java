package org.bagwright.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The name of a file, which is never blank. */
final class FileName implements ITypeConverter<Path> {
    @Override
    public Path convert(String typed) {
        try {
            if (!typed.isBlank()) {
                return Path.of(typed);
            }
        } catch (InvalidPathException wrong) {
            throw new TypeConversionException("expected the name of a file, found " + typed + hint(typed));
        }
        throw new TypeConversionException("expected the name of a file");
    }

    /** Where the system says no language, the letters of a name do not reach the program. */
    private static String hint(String typed) {
        return typed.indexOf('\ufffd') < 0
                ? ""
                : ": its letters are lost, as no language is set here. Try again after: export LC_ALL=C.UTF-8";
    }
}
