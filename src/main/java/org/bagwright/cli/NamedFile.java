package org.bagwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A file that a command reads or writes, by its name: where a result goes, and whether it may go there.
 *
 * @param path the file
 */
record NamedFile(Path path) {
    static final String PLAN = "-plan";
    static final String GAUGED = "-gauged";
    static final String SHOTS = "-shots";

    /**
     * Where a result goes that is a copy of the book.
     *
     * @param out where the person wants it; null is next to the book
     * @param suffix what is added to the name of a copy next to the book, such as {@code -plan}
     */
    Path copy(Path out, String suffix) throws WrongArguments, IOException {
        NamedFile target = out == null ? nextTo(suffix) : new NamedFile(out);
        if (!Files.exists(path)) {
            return target.path;
        }
        if (isSame(target.path)) {
            throw new WrongArguments("The result would replace the book itself. Give -o another name.");
        }
        target.requireFile(nextTo(suffix).name());
        if (!target.ending().equalsIgnoreCase(ending())) {
            throw new WrongArguments(
                    "The result needs the ending of the book: let " + target.path + " end in " + ending() + ".");
        }
        return target.path;
    }

    /** Next to the book: {@code bag.xlsx} becomes {@code bag-plan.xlsx}. */
    NamedFile nextTo(String suffix) {
        return new NamedFile(path.resolveSibling(stem() + suffix + ending()));
    }

    /** Next to the book with another ending: {@code bag.xlsx} becomes {@code bag.html}. */
    Path withEnding(String other) {
        return path.resolveSibling(stem() + other);
    }

    private String stem() {
        return name().substring(0, name().length() - ending().length());
    }

    /** Refuses what is a folder or is in none. */
    void requireFile(String usualName) throws WrongArguments {
        if (Files.isDirectory(path)) {
            throw new WrongArguments(
                    path + " is a folder; expected a file. Maybe \"" + path.resolve(usualName) + "\"?");
        }
        if (Files.isSymbolicLink(path) && !Files.exists(path)) {
            throw new WrongArguments(path + " is a broken link. Give another name.");
        }
        requireFolder();
    }

    void requireFolder() throws WrongArguments {
        Path folder = path.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new WrongArguments("There is no folder " + folder + " to write into.");
        }
    }

    boolean isSame(Path other) throws IOException {
        return path.equals(other) || (Files.exists(path) && Files.exists(other) && Files.isSameFile(path, other));
    }

    String ending() {
        String name = name();
        int dot = name.lastIndexOf('.');
        return dot <= 0 ? "" : name.substring(dot);
    }

    /** The last part of a path, which a root has not. */
    String name() {
        Path name = path.getFileName();
        return name == null ? "" : name.toString();
    }
}
