package org.bagwright.planning;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bagwright.files.SafeFile;

/** The books that come with the program: the blank one and the demos. */
public enum ShippedBook {
    BLANK("/templates/bag.xlsx", "a blank book"),
    TRIO("/demo-data/trio.xlsx", "three clubs with sleeves, few cells filled in, gaps made even"),
    FULL(
            "/demo-data/full.xlsx",
            "14 slots with clubs to choose from, weights, bends, swingweights, scarce stock and musts"),
    TEAM("/demo-data/team.xlsx", "12 right- and left-handed golfers who share a bench that runs short");

    private final String resource;
    private final String shows;

    ShippedBook(String resource, String shows) {
        this.resource = resource;
        this.shows = shows;
    }

    /** The demos, in the order in which they are shown. */
    public static List<ShippedBook> demos() {
        return List.of(TRIO, FULL, TEAM);
    }

    /** The demo of a name; empty where there is none. */
    public static Optional<ShippedBook> demo(String name) {
        return demos().stream().filter(demo -> demo.label().equals(name)).findFirst();
    }

    /** Its name, such as {@code trio}. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it shows, in a line. */
    public String shows() {
        return shows;
    }

    /** Copies it to a file that does not exist yet. */
    public void create(Path file) throws IOException {
        byte[] book = content();
        new SafeFile(file).create(output -> output.write(book));
    }

    /**
     * Copies it into a folder, which is made if need be. A copy that a person has changed is kept as a backup.
     *
     * @return the copy
     * @throws WorkbookProblems if a copy that a person has changed is open in another program
     */
    public Path copyInto(Path folder) throws WorkbookProblems, IOException {
        byte[] book = content();
        Files.createDirectories(folder);
        Path file = folder.resolve(label() + ".xlsx");
        if (!Files.isRegularFile(file) || !Arrays.equals(Files.readAllBytes(file), book)) {
            new Target(file).write(output -> output.write(book));
        }
        return file;
    }

    private byte[] content() throws IOException {
        try (InputStream input = ShippedBook.class.getResourceAsStream(resource)) {
            if (input == null) {
                throw new IOException("the program's own file " + resource + " is missing");
            }
            return input.readAllBytes();
        }
    }
}
