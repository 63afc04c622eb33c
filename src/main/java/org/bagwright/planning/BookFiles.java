package org.bagwright.planning;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.bagwright.files.SafeFile;

/** The books that come with the program: the blank one and the demos. */
public final class BookFiles {
    private static final Map<String, String> SHOWS = Map.of(
            "trio", "three clubs with sleeves, few cells filled in, gaps made even",
            "full", "14 slots with clubs to choose from, weights, bends, swingweights, scarce stock and musts",
            "team", "12 golfers of both hands who share a bench that runs short");
    private static final List<String> DEMOS = List.of("trio", "full", "team");

    private BookFiles() {}

    public static List<String> demoNames() {
        return DEMOS;
    }

    /** What a demo shows, in a line. */
    public static String demoShows(String name) {
        return SHOWS.get(name);
    }

    /** Copies the blank book to a file that does not exist yet. */
    public static void blank(Path file) throws IOException {
        byte[] book = resource("/templates/bag.xlsx");
        new SafeFile(file).create(output -> output.write(book));
    }

    /**
     * Copies a demo book into a folder, which is made if need be. A copy that a person has changed is kept as a backup.
     *
     * @return the copy
     * @throws WorkbookProblems if a copy that a person has changed is open in another program
     */
    public static Path demo(String name, Path folder) throws WorkbookProblems, IOException {
        byte[] book = resource("/demo-data/" + name + ".xlsx");
        Files.createDirectories(folder);
        Path file = folder.resolve(name + ".xlsx");
        if (!Files.isRegularFile(file) || !Arrays.equals(Files.readAllBytes(file), book)) {
            Target.write(file, output -> output.write(book));
        }
        return file;
    }

    private static byte[] resource(String path) throws IOException {
        try (InputStream input = BookFiles.class.getResourceAsStream(path)) {
            if (input == null) {
                throw new IOException("the program's own file " + path + " is missing");
            }
            return input.readAllBytes();
        }
    }
}
