package org.bagwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.bagwright.Needed;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script that draws the manual's pictures works on a book planned now. */
@Tag("regression")
class PicturesTest {
    private static final List<String> NEEDED = List.of("bash", "soffice", "pdftoppm", "pdftotext", "convert");

    @TempDir
    Path folder;

    @Test
    void picturesOfTrio_areDrawnAsTheyAreKept() throws IOException, InterruptedException {
        needPrograms();
        Terminal demo = Terminal.run("demo", "trio", "-o", folder.resolve("books"));
        assertEquals(0, demo.code(), demo.err());
        Path made = folder.resolve("made");
        Path said = folder.resolve("said.txt");
        Process script = new ProcessBuilder(
                        "bash",
                        ManualChapter.FOLDER.resolve("pictures.sh").toString(),
                        folder.resolve("books").toString(),
                        made.toString())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertTrue(script.waitFor(3, TimeUnit.MINUTES), "the script hangs");
        assertEquals(0, script.exitValue(), Files.readString(said, StandardCharsets.UTF_8));
        List<String> drawn;
        try (Stream<Path> files = Files.list(made)) {
            drawn = files.map(file -> file.getFileName().toString()).sorted().toList();
        }
        assertEquals(
                List.of("clubs-1.png", "ladder-1.png", "others.png", "plan-1.png", "start.png", "steps.png"), drawn);
        for (String name : drawn) {
            BufferedImage picture = ImageIO.read(made.resolve(name).toFile());
            BufferedImage kept = ImageIO.read(
                    ManualChapter.FOLDER.resolve("pictures").resolve(name).toFile());
            // Fonts differ from one machine to the next, the page does not.
            assertEquals(kept.getWidth(), picture.getWidth(), 0.1 * kept.getWidth(), name);
        }
    }

    private static void needPrograms() {
        List<String> missing = NEEDED.stream().filter(name -> !isOnPath(name)).toList();
        Needed.here(missing.isEmpty(), "programs " + missing);
    }

    private static boolean isOnPath(String name) {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .anyMatch(place -> Files.isExecutable(Path.of(place, name)));
    }
}
