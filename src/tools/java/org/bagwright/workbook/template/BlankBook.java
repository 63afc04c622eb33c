package org.bagwright.workbook.template;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Date;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.files.SafeFile;
import org.bagwright.workbook.schema.InputSheet;
import org.bagwright.workbook.schema.SheetSchema;

/** Writes the blank book: every input sheet that this version uses, with notes, drop-downs and one example row each. */
public final class BlankBook {
    private static final Instant MADE = Instant.parse("2026-01-01T00:00:00Z");
    private static final LocalDateTime PART_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private BlankBook() {}

    /**
     * Writes the blank book, replacing a file of that name. The same program on the same machine writes the same bytes;
     * only the picture of the clock depends on the fonts of the machine.
     *
     * @throws IOException if the file cannot be written
     */
    public static void write(Path file) throws IOException {
        new SafeFile(file).replaceOwn(BlankBook::writeTo);
    }

    private static void writeTo(OutputStream out) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            fill(workbook);
            workbook.write(bytes);
        }
        copyWithoutTimes(bytes.toByteArray(), out);
    }

    private static void fill(XSSFWorkbook workbook) throws IOException {
        TemplateStyles styles = new TemplateStyles(workbook);
        new TemplateStart(workbook, styles).add();
        for (InputSheet sheet : InputSheet.values()) {
            SheetSchema schema = sheet.schema();
            new TemplateSheet(workbook, styles, TemplateLayout.of(schema)).add();
        }
        new TemplateLists(workbook).add();
        for (InputSheet sheet : InputSheet.values()) {
            SheetSchema schema = sheet.schema();
            TemplateValidations.add(workbook.getSheet(schema.name()), TemplateLayout.of(schema));
        }
        workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
        workbook.setForceFormulaRecalculation(true);
        workbook.setActiveSheet(0);
        sign(workbook.getProperties());
    }

    private static void sign(POIXMLProperties properties) {
        properties.getCoreProperties().setCreator("Bagwright");
        properties.getCoreProperties().setTitle("Blank bag workbook");
        properties.getCoreProperties().setCreated(Optional.of(Date.from(MADE)));
        properties.getExtendedProperties().getUnderlyingProperties().setApplication("Bagwright");
    }

    private static void copyWithoutTimes(byte[] book, OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out);
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(book))) {
            for (ZipEntry part = in.getNextEntry(); part != null; part = in.getNextEntry()) {
                ZipEntry copy = new ZipEntry(part.getName());
                copy.setTimeLocal(PART_TIME);
                zip.putNextEntry(copy);
                in.transferTo(zip);
                zip.closeEntry();
            }
        }
        zip.finish();
    }
}
