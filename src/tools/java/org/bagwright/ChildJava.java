package org.bagwright;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Programs of their own on the classes of this one. */
public final class ChildJava {
    private ChildJava() {}

    /**
     * Ready to start, with one compiler and the simplest collector as the launcher chooses.
     *
     * @param words more options of Java, then the class and its arguments
     */
    public static ProcessBuilder of(Object... words) {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path")));
        List.of(words).forEach(word -> line.add(word.toString()));
        return new ProcessBuilder(line);
    }
}
