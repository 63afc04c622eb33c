package org.bagwright.workbook.template;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The committed template; {@code mvn test -Dtest=TemplateFileTest -Dbagwright.rewriteTemplate=true} writes it again. */
class TemplateFileTest {
    private static final Path COMMITTED = Path.of("templates", "bag.xlsx");

    @TempDir
    static Path folder;

    private static Path fresh;

    @BeforeAll
    static void writeOnce() throws IOException {
        fresh = folder.resolve("bag.xlsx");
        BlankBook.write(fresh);
        if (Boolean.getBoolean("bagwright.rewriteTemplate")) {
            BlankBook.write(COMMITTED);
        }
    }

    @Test
    @Tag("regression")
    void committedTemplate_isWhatTheProgramWrites() throws IOException {
        Map<String, byte[]> written = parts(fresh);
        Map<String, byte[]> committed = parts(COMMITTED);
        assertEquals(written.keySet(), committed.keySet());
        written.forEach((name, bytes) -> {
            if (!name.endsWith(".png")) {
                assertEquals(
                        text(bytes), text(committed.get(name)), name + ": run with -Dbagwright.rewriteTemplate=true");
            }
        });
    }

    @Test
    @Tag("regression")
    void writtenTwice_isTheSameBytes() throws IOException {
        Path again = folder.resolve("again.xlsx");
        BlankBook.write(again);
        assertArrayEquals(Files.readAllBytes(fresh), Files.readAllBytes(again));
    }

    @Test
    @Tag("analytic")
    void clockPicture_isAReadablePng() throws IOException {
        Map<String, byte[]> parts = parts(COMMITTED);
        byte[] png = parts.entrySet().stream()
                .filter(part -> part.getKey().endsWith(".png"))
                .findFirst()
                .orElseThrow()
                .getValue();
        assertEquals(
                ClockPicture.WIDTH, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
    }

    private static Map<String, byte[]> parts(Path file) throws IOException {
        Map<String, byte[]> parts = new TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
            for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                parts.put(part.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
