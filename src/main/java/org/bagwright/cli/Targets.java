package org.bagwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where results go, and whether they may go there. */
final class Targets {
    static final String PLAN = "-plan";
    static final String GAUGED = "-gauged";

    private Targets() {}

    /**
     * Where a result goes that is a copy of the book.
     *
     * @param out where the person wants it; null is beside the book
     * @param suffix what the name of a copy beside the book gets, such as {@code -plan}
     */
    static Path copy(Path file, Path out, String suffix) throws WrongArguments, IOException {
        Path target = out == null ? besides(file, suffix) : out;
        if (!Files.exists(file)) {
            return target;
        }
        if (isSame(target, file)) {
            throw new WrongArguments("The result would replace the book itself. Give -o another name.");
        }
        requireFile(target, besides(file, suffix));
        String ending = ending(file);
        if (!ending(target).equalsIgnoreCase(ending)) {
            throw new WrongArguments(
                    "The result needs the ending of the book: let " + target + " end in " + ending + ".");
        }
        return target;
    }

    /** Beside the book: {@code bag.xlsx} becomes {@code bag-plan.xlsx}. */
    static Path besides(Path file, String suffix) {
        String name = name(file);
        String ending = ending(file);
        return file.resolveSibling(name.substring(0, name.length() - ending.length()) + suffix + ending);
    }

    /** Refuses a target that is a folder or lies in none. */
    static void requireFile(Path target, Path usual) throws WrongArguments {
        if (Files.isDirectory(target)) {
            throw new WrongArguments(
                    target + " is a folder; expected a file. Maybe \"" + target.resolve(name(usual)) + "\"?");
        }
        if (Files.isSymbolicLink(target) && !Files.exists(target)) {
            throw new WrongArguments(target + " is a broken link. Give another name.");
        }
        requireFolder(target);
    }

    static void requireFolder(Path target) throws WrongArguments {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new WrongArguments("There is no folder " + folder + " to write into.");
        }
    }

    static boolean isSame(Path one, Path other) throws IOException {
        return one.equals(other) || (Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other));
    }

    static String ending(Path file) {
        String name = name(file);
        int dot = name.lastIndexOf('.');
        return dot <= 0 ? "" : name.substring(dot);
    }

    /** The last part of a path, which a root has not. */
    static String name(Path file) {
        Path name = file.getFileName();
        return name == null ? "" : name.toString();
    }
}
