package org.bagwright.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A command that writes a book in place, and the demo book it is tried on. */
enum KilledCommand {
    PLAN("plan --in-place", "trio", "Plan"),
    ADD_SHOTS("add-shots --in-place", "trio", "Shots"),
    GAUGE("gauge --write --in-place", "full", "Readings");

    private final String label;
    private final String demo;
    private final String sheet;

    KilledCommand(String label, String demo, String sheet) {
        this.label = label;
        this.demo = demo;
        this.sheet = sheet;
    }

    String label() {
        return label;
    }

    byte[] demo() throws IOException {
        return Files.readAllBytes(Path.of("demo-data", demo + ".xlsx"));
    }

    /** A sheet that every result has. */
    String sheet() {
        return sheet;
    }

    /** The arguments; a file of shots is made in a folder of its own. */
    List<String> words(Path book) throws IOException {
        return switch (this) {
            case PLAN -> List.of("plan", book.toString(), "--in-place");
            case GAUGE -> List.of("gauge", book.toString(), "--write", "--in-place");
            case ADD_SHOTS -> List.of("add-shots", book.toString(), shots(book).toString(), "--in-place");
        };
    }

    private static Path shots(Path book) throws IOException {
        Path shots = book.getParent().resolveSibling("shots").resolve("may.csv");
        if (!Files.exists(shots)) {
            Files.createDirectories(shots.getParent());
            Files.writeString(shots, "Date,Club,Carry (yd)\n2026-05-31,Driver,221\n2026-05-31,Driver,224\n");
        }
        return shots;
    }
}
