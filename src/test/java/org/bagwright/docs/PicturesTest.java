package org.bagwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.bagwright.Needed;
import org.bagwright.PlannedDemos;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script that draws the manual's pictures draws what is kept, on books planned now. */
@Tag("regression")
class PicturesTest {
    private static final List<String> NEEDED = List.of("bash", "soffice", "pdftoppm", "pdftotext", "convert");

    /** A field that differs more has another digit, mark or fill; with the fonts that LibreOffice brings it is some thousandths. */
    private static final double MOST_RATIO = 0.1;

    @TempDir
    Path folder;

    @Test
    void pictures_areDrawnAsTheyAreKept() throws IOException, InterruptedException {
        needPrograms();
        Needed.arial();
        Path books = Files.createDirectory(folder.resolve("books"));
        for (String demo : List.of("trio", "full", "team")) {
            PlannedDemos.file(demo, books);
        }
        Path made = folder.resolve("made");
        Path said = folder.resolve("said.txt");
        Process script = new ProcessBuilder(
                        "bash",
                        ManualChapter.FOLDER.resolve("pictures.sh").toString(),
                        books.toString(),
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
                List.of(
                        "bench-card.png",
                        "clubs-1.png",
                        "golfer-card.png",
                        "ladder-1.png",
                        "others.png",
                        "plan-1.png",
                        "start.png",
                        "steps.png",
                        "team.png"),
                drawn);
        for (String name : drawn) {
            DrawnPicture kept = kept(name);
            double differenceRatio = kept.differenceRatio(DrawnPicture.of(made.resolve(name)));
            assertTrue(differenceRatio < MOST_RATIO, name + " differs from the kept one by " + differenceRatio);
        }
    }

    private static DrawnPicture kept(String name) throws IOException {
        return DrawnPicture.of(ManualChapter.FOLDER.resolve("pictures").resolve(name));
    }

    /** What the comparison must see: the picture of another sheet, one without its chart, one with a digit or mark elsewhere. */
    @Test
    void wrongPictures_differ() throws IOException {
        DrawnPicture plan = kept("plan-1.png");
        assertEquals(0, plan.differenceRatio(plan), 0);
        assertTrue(plan.differenceRatio(kept("ladder-1.png")) > MOST_RATIO, "another sheet");
        assertTrue(plan.differenceRatio(without(plan, 0.8, 0.2, 0.2, 0.6)) > MOST_RATIO, "no chart");
        DrawnPicture moved = without(plan, 0, 0, 0, 0);
        Graphics2D graphics = moved.image().createGraphics();
        graphics.setColor(Color.BLACK);
        graphics.fillRect(600, 300, 5, 9);
        graphics.dispose();
        assertTrue(plan.differenceRatio(moved) > MOST_RATIO, "a digit");
    }

    /** A copy with a white rectangle, in parts of its width and height. */
    private static DrawnPicture without(DrawnPicture picture, double x, double y, double width, double height) {
        BufferedImage from = picture.image();
        BufferedImage copy = new BufferedImage(from.getWidth(), from.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = copy.createGraphics();
        graphics.drawImage(from, 0, 0, null);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(
                (int) (x * from.getWidth()), (int) (y * from.getHeight()), (int) (width * from.getWidth()), (int)
                        (height * from.getHeight()));
        graphics.dispose();
        return new DrawnPicture(copy);
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
