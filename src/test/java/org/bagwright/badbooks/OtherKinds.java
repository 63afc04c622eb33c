package org.bagwright.badbooks;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** Workbooks of kinds that are not read, each under its own ending and under that of a book. */
final class OtherKinds {
    private static final String BINARY = "this is a binary workbook (.xlsb), not an .xlsx workbook.";
    private static final String OPEN = "this is an OpenDocument file (.ods), not an .xlsx workbook.";
    private static final String OLD = "this is an old .xls file, not an .xlsx workbook.";
    private static final String SAVE_AS = " Open it in a spreadsheet program and save it as an .xlsx workbook.";

    private OtherKinds() {}

    static List<BadBook> all() {
        return List.of(
                new BadBook("binary workbook", "bag.xlsb: " + BINARY + SAVE_AS, OtherKinds::binary),
                new BadBook("binary workbook renamed", "bag.xlsx: " + BINARY + SAVE_AS, OtherKinds::binary),
                new BadBook("OpenDocument", "bag.ods: " + OPEN + SAVE_AS, OtherKinds::openDocument),
                new BadBook("OpenDocument renamed", "bag.xlsx: " + OPEN + SAVE_AS, OtherKinds::openDocument),
                new BadBook("old workbook", "bag.xls: " + OLD + SAVE_AS, OtherKinds::old),
                new BadBook("old workbook renamed", "bag.xlsx: " + OLD + SAVE_AS, OtherKinds::old),
                new BadBook(
                        "password",
                        "bag.xlsx: the workbook is protected by a password; save a copy of it without a password.",
                        OtherKinds::locked));
    }

    /** The list of sheets in the binary records of the format's specification: begin, one sheet, end. */
    private static byte[] binary() throws IOException {
        ByteArrayOutputStream records = new ByteArrayOutputStream();
        record(records, 131, new byte[0]);
        record(records, 143, new byte[0]);
        ByteArrayOutputStream sheet = new ByteArrayOutputStream();
        sheet.write(new byte[] {0, 0, 0, 0, 1, 0, 0, 0});
        wide(sheet, "rId1");
        wide(sheet, "Golfers");
        record(records, 156, sheet.toByteArray());
        record(records, 144, new byte[0]);
        record(records, 132, new byte[0]);
        String start = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
        String types = start + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                + "<Default Extension=\"bin\" ContentType=\"application/vnd.ms-excel.sheet.binary.macroEnabled.main\"/>"
                + "<Default Extension=\"rels\""
                + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                + "<Override PartName=\"/xl/worksheets/sheet1.bin\" ContentType=\"application/vnd.ms-excel.worksheet\"/>"
                + "</Types>";
        String office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";
        return zip(Map.of(
                "[Content_Types].xml",
                text(types),
                "_rels/.rels",
                text(start + relation(office + "officeDocument", "xl/workbook.bin")),
                "xl/_rels/workbook.bin.rels",
                text(start + relation(office + "worksheet", "worksheets/sheet1.bin")),
                "xl/workbook.bin",
                records.toByteArray(),
                "xl/worksheets/sheet1.bin",
                new byte[] {(byte) 129, 1, 0, (byte) 145, 1, 0, (byte) 146, 1, 0, (byte) 130, 1, 0}));
    }

    private static String relation(String type, String target) {
        return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                + "<Relationship Id=\"rId1\" Type=\"" + type + "\" Target=\"" + target + "\"/></Relationships>";
    }

    private static void record(OutputStream out, int type, byte[] content) throws IOException {
        out.write(0x80 | (type & 0x7f));
        out.write(type >> 7);
        out.write(content.length);
        out.write(content);
    }

    private static void wide(OutputStream out, String text) throws IOException {
        out.write(new byte[] {(byte) text.length(), 0, 0, 0});
        out.write(text.getBytes(StandardCharsets.UTF_16LE));
    }

    private static byte[] openDocument() throws IOException {
        return zip(Map.of(
                "mimetype",
                text("application/vnd.oasis.opendocument.spreadsheet"),
                "content.xml",
                text("<office:document-content xmlns:office=\"urn:oasis:names:tc:opendocument:xmlns:office:1.0\"/>"),
                "META-INF/manifest.xml",
                text("<manifest:manifest xmlns:manifest=\"urn:oasis:names:tc:opendocument:xmlns:manifest:1.0\"/>")));
    }

    private static byte[] old() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (HSSFWorkbook old = new HSSFWorkbook()) {
            old.createSheet("Golfers").createRow(0).createCell(0).setCellValue("Golfer");
            old.write(bytes);
        }
        return bytes.toByteArray();
    }

    private static byte[] locked() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (POIFSFileSystem locked = new POIFSFileSystem()) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            encryptor.confirmPassword("secret");
            try (OutputStream out = encryptor.getDataStream(locked)) {
                BadBook.sound().write(out);
            }
            locked.writeFilesystem(bytes);
        }
        return bytes.toByteArray();
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** In the order of their names backwards, since a mimetype comes first. */
    private static byte[] zip(Map<String, byte[]> parts) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> part :
                    new TreeMap<>(parts).descendingMap().entrySet()) {
                out.putNextEntry(new ZipEntry(part.getKey()));
                out.write(part.getValue());
            }
        }
        return bytes.toByteArray();
    }
}
