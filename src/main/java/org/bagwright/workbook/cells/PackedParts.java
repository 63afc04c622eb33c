package org.bagwright.workbook.cells;

import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveInputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.poi.openxml4j.util.ZipSecureFile;

/** The parts of a workbook's file as they are packed, before the library sees them: a workbook's file is a zip. */
final class PackedParts {
    /** An honest team book of 200 sheets with charts and notes has 3,000; the library takes seconds for these. */
    static final int MOST_PARTS = 5000;

    /** What is smaller may be packed as tightly as it likes. */
    private static final int SMALL_BYTES = 100 << 10;

    static {
        // The guard of the library against zip bombs allows 1000 parts.
        ZipSecureFile.setMaxFileCount(MOST_PARTS + 1L);
    }

    private final byte[] bytes;
    private final Path file;

    /**
     * @param bytes the file's content
     * @param file the file, for messages
     */
    PackedParts(byte[] bytes, Path file) {
        this.bytes = bytes;
        this.file = file;
    }

    /** @throws UnreadableBookException if this is no workbook, has too many parts, or a part is damaged */
    void check() throws UnreadableBookException {
        try (ZipFile zip = ZipFile.builder().setByteArray(bytes).get()) {
            checkKind(zip);
            int parts = Collections.list(zip.getEntries()).size();
            if (parts > MOST_PARTS) {
                throw new UnreadableBookException(
                        file,
                        "the file has " + parts + " parts, such as sheets, charts and notes; expected at most "
                                + MOST_PARTS + ". Split the book, or delete sheets that are not needed.");
            }
            checkContents(zip, parts);
        } catch (IOException | RuntimeException broken) {
            throw UnreadableBookException.damaged(file);
        }
    }

    private void checkKind(ZipFile zip) throws UnreadableBookException, IOException {
        ZipArchiveEntry kind = zip.getEntry("mimetype");
        if (kind != null && isOpenDocument(zip, kind)) {
            throw new UnreadableBookException(
                    file,
                    "this is an OpenDocument file (.ods), not an .xlsx workbook." + UnreadableBookException.SAVE_AS);
        }
        if (zip.getEntry("xl/workbook.bin") != null) {
            throw new UnreadableBookException(
                    file,
                    "this is a binary workbook (.xlsb), not an .xlsx workbook." + UnreadableBookException.SAVE_AS);
        }
        if (zip.getEntry("[Content_Types].xml") == null) {
            throw UnreadableBookException.otherKind(file);
        }
    }

    private static boolean isOpenDocument(ZipFile zip, ZipArchiveEntry kind) throws IOException {
        try (InputStream in = zip.getInputStream(kind)) {
            String text = new String(in.readNBytes(100), StandardCharsets.US_ASCII);
            return text.startsWith("application/vnd.oasis.opendocument");
        }
    }

    /**
     * Reads the parts one after the other, as the library does, and compares them with the zip's list of parts: a zip that is
     * cut short may still open with its last parts missing.
     */
    private void checkContents(ZipFile listed, int parts) throws UnreadableBookException, IOException {
        int found = 0;
        try (ZipArchiveInputStream zip = new ZipArchiveInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipArchiveEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
                checkContent(zip, part.getName(), listed.getEntry(part.getName()));
                found++;
            }
        }
        if (found != parts) {
            throw UnreadableBookException.damaged(file);
        }
    }

    private void checkContent(ZipArchiveInputStream zip, String name, ZipArchiveEntry listed)
            throws UnreadableBookException, IOException {
        CheckedInputStream content = new CheckedInputStream(new Unpacked(zip), new CRC32());
        PartXml xml = new PartXml(name, file);
        xml.read(content);
        content.transferTo(OutputStream.nullOutputStream());
        if (listed == null || content.getChecksum().getValue() != listed.getCrc()) {
            throw UnreadableBookException.damagedPart(file, name, "is not as it was written: its checksum differs");
        }
        xml.requireSound();
    }

    /** One part, unpacked. It stays open when the parser closes it, since the next part follows. */
    private static final class Unpacked extends FilterInputStream {
        private final ZipArchiveInputStream zip;

        Unpacked(ZipArchiveInputStream zip) {
            super(zip);
            this.zip = zip;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            int count = zip.read(into, offset, length);
            long unpacked = zip.getUncompressedCount();
            if (unpacked > SMALL_BYTES && zip.getCompressedCount() < unpacked * ZipSecureFile.getMinInflateRatio()) {
                throw new IOException("a part is hardly anything when packed: it would fill the memory");
            }
            return count;
        }

        @Override
        public void close() {}
    }
}
