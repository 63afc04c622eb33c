package org.bagwright.badbooks;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.UserDefinedFileAttributeView;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.Needed;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command on a book with an extended attribute and a second name (a hard link). */
@Tag("analytic")
class MarkedFileTest {
    private static final String TAG = "tag";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check BOOK",
                "chart BOOK",
                "gauge BOOK",
                "compare BOOK OTHER --seconds 1",
                "plan BOOK",
                "plan BOOK --in-place",
                "gauge BOOK --write --in-place",
                "add-shots BOOK SHOTS --in-place"
            })
    void bookKeepsItsAttribute_andItsSecondNameTheOldContent(String words) throws Exception {
        Path book = Files.write(folder.resolve("bag.xlsx"), bookWithReadings());
        Needed.labels(book);
        labels(book).write(TAG, ByteBuffer.wrap("club".getBytes(StandardCharsets.UTF_8)));
        byte[] before = Files.readAllBytes(book);
        Path second = Files.createLink(folder.resolve("second.xlsx"), book);
        Terminal run = Terminal.run(arguments(words));
        assertEquals(0, run.code(), run.out() + run.err());
        assertEquals("club", label(book));
        assertArrayEquals(before, Files.readAllBytes(second));
        List<Path> backups = backups();
        assertEquals(words.contains("--in-place") ? 1 : 0, backups.size());
        for (Path backup : backups) {
            assertArrayEquals(before, Files.readAllBytes(backup));
            assertEquals("club", label(backup));
            assertFalse(Arrays.equals(before, Files.readAllBytes(book)));
        }
    }

    private static byte[] bookWithReadings() throws IOException {
        try (XSSFWorkbook book = BadBook.sound()) {
            XSSFSheet readings = book.createSheet("Readings");
            List<List<Object>> rows = List.of(
                    List.of("Golfer", "Club", "Setting", "Loft", "Lie"),
                    List.of("Golfer A", "Driver", "1", 11.9, 58.1),
                    List.of("Golfer A", "Driver", "2", 9.1, 58.0));
            for (int row = 0; row < rows.size(); row++) {
                for (int column = 0; column < 5; column++) {
                    var cell = BadBook.cell(book, readings.getSheetName() + "!" + (char) ('A' + column) + (row + 1));
                    if (rows.get(row).get(column) instanceof Double number) {
                        cell.setCellValue(number);
                    } else {
                        cell.setCellValue((String) rows.get(row).get(column));
                    }
                }
            }
            return BadBook.bytes(book);
        }
    }

    private Object[] arguments(String words) throws IOException {
        Path shots = Files.writeString(folder.resolve("may.csv"), "Golfer,Club,Carry (yd)\nGolfer A,Driver,231\n");
        return Stream.of(words.split(" "))
                .map(word -> switch (word) {
                    case "BOOK" -> folder.resolve("bag.xlsx");
                    case "OTHER" -> Path.of("demo-data", "trio.xlsx");
                    case "SHOTS" -> shots;
                    default -> word;
                })
                .toArray();
    }

    private List<Path> backups() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().contains(".backup-")).toList();
        }
    }

    private static UserDefinedFileAttributeView labels(Path file) {
        return Files.getFileAttributeView(file, UserDefinedFileAttributeView.class);
    }

    private static String label(Path file) throws IOException {
        ByteBuffer value = ByteBuffer.allocate(labels(file).size(TAG));
        labels(file).read(TAG, value);
        return new String(value.array(), StandardCharsets.UTF_8);
    }
}
