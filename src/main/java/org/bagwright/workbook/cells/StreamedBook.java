package org.bagwright.workbook.cells;

import java.io.BufferedWriter;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.poi.openxml4j.util.ZipFileZipEntrySource;
import org.apache.poi.ss.usermodel.RichTextString;
import org.apache.poi.xssf.model.SharedStringsTable;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.streaming.SheetDataWriter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook whose new sheets keep their rows as packed text, a hundredth of what cells take. Unlike the library's own it
 * makes no temporary file: a fitter's book stays out of folders that he does not know.
 */
public final class StreamedBook extends SXSSFWorkbook {
    private static final int ROWS_KEPT = 100;

    public StreamedBook(XSSFWorkbook workbook) {
        super(workbook, ROWS_KEPT, false, true);
    }

    @Override
    protected SheetDataWriter createSheetDataWriter() throws IOException {
        return new PackedRows(getXSSFWorkbook().getSharedStringSource());
    }

    @Override
    public void write(OutputStream target) throws IOException {
        flushSheets();
        ByteArrayOutputStream frame = new ByteArrayOutputStream();
        ZipArchiveOutputStream packing = new ZipArchiveOutputStream(frame);
        packing.setLevel(Deflater.BEST_SPEED);
        getXSSFWorkbook().write(packing);
        try (ZipFile parts = ZipFile.builder().setByteArray(frame.toByteArray()).get()) {
            injectData(new ZipFileZipEntrySource(parts), target);
        }
    }

    /** The texts of a book, with the places of those that were written: the library's own look-up makes XML of each text. */
    private static final class KnownTexts extends SharedStringsTable {
        private final SharedStringsTable texts;
        private final Map<String, Integer> places = new HashMap<>();

        KnownTexts(SharedStringsTable texts) {
            this.texts = texts;
        }

        @Override
        public int addSharedStringItem(RichTextString text) {
            return text.numFormattingRuns() > 0
                    ? texts.addSharedStringItem(text)
                    : places.computeIfAbsent(text.getString(), any -> texts.addSharedStringItem(text));
        }
    }

    /** The rows of one sheet, packed. The library has deprecated what it offers for this, but has nothing in its place. */
    @SuppressWarnings("deprecation")
    private static final class PackedRows extends SheetDataWriter {
        /** Set while the library's constructor runs, so it must not have a value of its own here. */
        private ByteArrayOutputStream packed;

        PackedRows(SharedStringsTable texts) throws IOException {
            super(new KnownTexts(texts));
        }

        @Override
        public File createTempFile() {
            return new File("");
        }

        @Override
        public Writer createWriter(File none) {
            packed = new ByteArrayOutputStream();
            OutputStream packing = new DeflaterOutputStream(packed, new Deflater(Deflater.BEST_SPEED), 1 << 14);
            return new BufferedWriter(new OutputStreamWriter(packing, StandardCharsets.UTF_8), 1 << 14);
        }

        @Override
        public InputStream getWorksheetXMLInputStream() throws IOException {
            _out.close();
            return new InflaterInputStream(new ByteArrayInputStream(packed.toByteArray()));
        }
    }
}
