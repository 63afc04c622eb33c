package org.bagwright.badbooks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * The files of one try.
 *
 * @param folder holds nothing else
 * @param shots the name of the file of shots
 */
record TryFiles(Path folder, String shots) {
    static final String BOOK = "bag.xlsx";

    Path book() {
        return folder.resolve(BOOK);
    }

    /** A word of a command, or the file that it names. */
    String named(String word) {
        return switch (word) {
            case "BOOK" -> book().toString();
            case "COPY" -> folder.resolve("copy.xlsx").toString();
            case "SHOTS" -> folder.resolve(shots).toString();
            case "OUT.xlsx" -> folder.resolve("out.xlsx").toString();
            case "OUT.html" -> folder.resolve("out.html").toString();
            default -> word;
        };
    }

    /** Everything in the folder but the book and what the try itself has put there. */
    List<Path> written() throws IOException {
        List<String> own = List.of(BOOK, "copy.xlsx", shots);
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> !own.contains(file.getFileName().toString()))
                    .toList();
        }
    }
}
