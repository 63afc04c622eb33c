package org.bagwright.badbooks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files with so many parts or sheets that the library would be at it for minutes. */
@Tag("regression")
class PartBudgetTest {
    /** The library needs 15 to 80 s for these. */
    private static final Duration AT_ONCE = Duration.ofSeconds(8);

    @TempDir
    Path folder;

    @Test
    void nineteenThousandParts_areRefusedAtOnce() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(BadBook.bytes(BadBook.sound())));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                out.putNextEntry(new ZipEntry(entry.getName()));
                in.transferTo(out);
            }
            for (int part = 0; part < 19_000; part++) {
                out.putNextEntry(new ZipEntry("xl/media/image" + part + ".png"));
                out.write(part);
            }
        }
        refused(bytes.toByteArray(), "parts, such as sheets, charts and notes; expected at most 5000.");
    }

    @Test
    void fiveThousandSheetsOfOneContent_areRefusedAtOnce() throws IOException {
        byte[] bytes = BadBook.withPart(BadBook.bytes(BadBook.sound()), "xl/workbook.xml", text -> {
            StringBuilder sheets = new StringBuilder();
            for (int sheet = 0; sheet < 5000; sheet++) {
                sheets.append("<sheet name=\"More " + sheet + "\" r:id=\"rId3\" sheetId=\"" + (100 + sheet) + "\"/>");
            }
            return text.replace("</sheets>", sheets + "</sheets>");
        });
        refused(bytes, "share the same content");
    }

    private void refused(byte[] bytes, String says) throws IOException {
        Path file = Files.write(folder.resolve("bag.xlsx"), bytes);
        assertTimeout(AT_ONCE, () -> {
            Terminal check = Terminal.run("check", file);
            assertEquals(3, check.code(), check.out());
            assertTrue(check.out().contains(says), check.out());
        });
    }
}
