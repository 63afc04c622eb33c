package org.bagwright.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbookType;
import org.bagwright.Needed;
import org.bagwright.domain.book.Message;
import org.bagwright.workbook.read.BookReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("analytic")
class BadFileTest {
    @TempDir
    Path folder;

    @Test
    void missingFile_isOneProblem() {
        assertProblem(folder.resolve("bag.xlsx"), "there is no such file");
    }

    @Test
    void folder_isOneProblem() throws IOException {
        assertProblem(Files.createDirectory(folder.resolve("bag.xlsx")), "this is a folder");
    }

    /** Reading it would never end. */
    @Test
    void device_isOneProblem() throws IOException {
        Needed.linux();
        assertProblem(Files.createSymbolicLink(folder.resolve("bag.xlsx"), Path.of("/dev/zero")), "a device or a pipe");
    }

    @Test
    void emptyFile_isOneProblem() throws IOException {
        assertProblem(file(new byte[0]), "the file is empty");
    }

    @Test
    void csvRenamed_isOneProblem() throws IOException {
        assertProblem(file("Golfer;Slot\nAnn;1\n".getBytes(StandardCharsets.UTF_8)), "such as CSV text");
    }

    @Test
    void webPageRenamed_isOneProblem() throws IOException {
        assertProblem(file("<html><table></table></html>".getBytes(StandardCharsets.UTF_8)), "a web page");
    }

    @Test
    void oldXlsRenamed_isOneProblem() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (HSSFWorkbook old = new HSSFWorkbook()) {
            old.createSheet("Golfers").createRow(0).createCell(0).setCellValue("Golfer");
            old.write(bytes);
        }
        assertProblem(file(bytes.toByteArray()), "an old .xls file");
    }

    @Test
    void passwordProtected_isOneProblem() throws Exception {
        Path file = folder.resolve("bag.xlsx");
        try (POIFSFileSystem locked = new POIFSFileSystem()) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            encryptor.confirmPassword("secret");
            try (OutputStream out = encryptor.getDataStream(locked)) {
                TestBook.sound().workbook().write(out);
            }
            try (OutputStream out = Files.newOutputStream(file)) {
                locked.writeFilesystem(out);
            }
        }
        assertProblem(file, "protected by a password");
    }

    @Test
    void openDocumentRenamed_isOneProblem() throws IOException {
        byte[] mimeType = "application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.US_ASCII);
        assertProblem(file(zip("mimetype", mimeType)), "OpenDocument");
    }

    @Test
    void otherZip_isOneProblem() throws IOException {
        assertProblem(file(zip("a.txt", new byte[] {1, 2, 3})), "another kind");
    }

    @Test
    void truncatedAtAnyLength_isOneProblem() throws IOException {
        byte[] whole = bytesOf(TestBook.sound());
        assertTrue(
                BookReader.read(file(whole)).messages().stream()
                        .allMatch(message -> message.severity() == Message.Severity.ASSUMED),
                "whole, only something assumed");
        for (int length : new int[] {1, 3, 4, 30, 500, whole.length / 2, whole.length - 40, whole.length - 1}) {
            assertProblem(file(Arrays.copyOf(whole, length)), "");
        }
    }

    @Test
    void brokenSheetXml_isOneProblem() throws IOException {
        byte[] broken = replaced(bytesOf(TestBook.sound()), "xl/worksheets/sheet1.xml", "<worksheet><oops");
        assertProblem(file(broken), "damaged");
    }

    @Test
    void missingSheetPart_isOneProblem() throws IOException {
        byte[] broken = replaced(bytesOf(TestBook.sound()), "xl/worksheets/sheet2.xml", null);
        assertProblem(file(broken), "the content of its sheet \"Golfers\" is missing");
    }

    @Test
    void macroBook_isRead() throws IOException {
        TestBook book = TestBook.sound();
        book.workbook().setWorkbookType(XSSFWorkbookType.XLSM);
        Path file = folder.resolve("bag.xlsm");
        book.save(file);
        assertTrue(BookReader.read(file).book().isPresent());
    }

    @Test
    void bookOfMoreThanAThousandParts_isRead() throws IOException {
        TestBook book = TestBook.sound();
        for (int index = 0; index < 1100; index++) {
            XSSFSheet own = book.workbook().createSheet("own " + index);
            own.createRow(0).createCell(0).setCellValue(index);
        }
        Path file = folder.resolve("bag.xlsx");
        book.save(file);
        assertTrue(BookReader.read(file).book().isPresent());
    }

    @Test
    void goodFile_isNotTouchedByReading() throws IOException {
        byte[] before = bytesOf(TestBook.sound());
        Path file = file(before);
        assertTrue(file.toFile().setWritable(false));
        assertTrue(BookReader.read(file).book().isPresent());
        assertArrayEquals(before, Files.readAllBytes(file));
        assertEquals(List.of("bag.xlsx"), List.of(folder.toFile().list()));
    }

    @Test
    void emptyWorkbook_saysWhichSheetsAreMissing() throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            workbook.createSheet("Sheet1");
            Path file = folder.resolve("bag.xlsx");
            try (OutputStream out = Files.newOutputStream(file)) {
                workbook.write(out);
            }
            List<String> cells = BookReader.read(file).messages().stream()
                    .filter(message -> message.severity() == Message.Severity.PROBLEM)
                    .map(Message::cell)
                    .toList();
            assertEquals(List.of("Golfers", "Clubs"), cells);
        }
    }

    private static void assertProblem(Path file, String part) {
        BookReader.Result result = BookReader.read(file);
        assertTrue(result.book().isEmpty());
        assertEquals(1, result.messages().size(), () -> "one message: " + result.messages());
        Message message = result.messages().get(0);
        assertEquals("bag.xlsx", message.cell());
        assertEquals(Message.Severity.PROBLEM, message.severity());
        assertTrue(message.text().contains(part), message::text);
    }

    private Path file(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("bag.xlsx"), bytes);
    }

    private static byte[] bytesOf(TestBook book) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        book.workbook().write(bytes);
        return bytes.toByteArray();
    }

    private static byte[] zip(String name, byte[] content) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(content);
        }
        return bytes.toByteArray();
    }

    /** The zip with one part replaced, or left out. */
    private static byte[] replaced(byte[] whole, String part, String content) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new java.io.ByteArrayInputStream(whole));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                byte[] old = in.readAllBytes();
                if (!entry.getName().equals(part) || content != null) {
                    out.putNextEntry(new ZipEntry(entry.getName()));
                    out.write(entry.getName().equals(part) ? content.getBytes(StandardCharsets.UTF_8) : old);
                }
            }
        }
        return bytes.toByteArray();
    }
}
