package org.bagwright.workbook.cells;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackageRelationshipTypes;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.xssf.usermodel.XSSFRelation;

/**
 * The parts of a book's file before its cells are in memory.
 *
 * @param content the parts
 * @param file the file
 */
record BookParts(OPCPackage content, Path file) {
    /** Memory that the library takes for a sheet against its size in the file, unpacked: measured 32 with a cell a row. */
    private static final long MEMORY_PER_SHEET = 25;

    /** Refuses at once what would run for minutes and then out of memory. */
    void checkSize() throws UnreadableBookException, IOException {
        long sheetBytes = 0;
        for (PackagePart sheet : content.getPartsByContentType(XSSFRelation.WORKSHEET.getContentType())) {
            try (InputStream in = sheet.getInputStream()) {
                sheetBytes += in.transferTo(OutputStream.nullOutputStream());
            }
        }
        if (sheetBytes > Runtime.getRuntime().maxMemory() / MEMORY_PER_SHEET) {
            throw new UnreadableBookException(
                    file,
                    "its sheets need more memory than there is. Delete rows that hold nothing but formatting,"
                            + " or use a machine with more memory.");
        }
    }

    /**
     * POI does not notice when the part with the texts is missing, and then every cell with a text is blank. Where the
     * properties are missing, it writes them with a second link to them, and nothing opens the result.
     */
    void checkMissing() throws UnreadableBookException, InvalidFormatException {
        for (PackageRelationship properties :
                content.getRelationshipsByType(PackageRelationshipTypes.CORE_PROPERTIES)) {
            if (!contains(properties)) {
                String part = name(properties).getName().substring(1);
                throw UnreadableBookException.damagedPart(file, part, "is missing");
            }
        }
        for (PackagePart part : content.getParts()) {
            if (!part.isRelationshipPart()) {
                checkTexts(part);
            }
        }
    }

    private void checkTexts(PackagePart part) throws UnreadableBookException, InvalidFormatException {
        for (PackageRelationship texts : part.getRelationshipsByType(XSSFRelation.SHARED_STRINGS.getRelation())) {
            if (!contains(texts)) {
                throw new UnreadableBookException(
                        file, "the file is damaged: the texts of its cells are missing; use an earlier copy.");
            }
        }
    }

    private boolean contains(PackageRelationship relation) throws InvalidFormatException {
        return content.containPart(name(relation));
    }

    private static PackagePartName name(PackageRelationship relation) throws InvalidFormatException {
        return PackagingURIHelper.createPartName(relation.getTargetURI());
    }
}
