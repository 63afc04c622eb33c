package org.bagwright.workbook.cells;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ooxml.POIXMLTypeLoader;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackageRelationshipCollection;
import org.apache.poi.openxml4j.opc.PackageRelationshipTypes;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.apache.xmlbeans.XmlException;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorkbookDocument;

/**
 * The sheets of a book that is not yet in memory: each must have a content of its own, and each content a sheet. The library
 * would read a content again for each sheet that shares it, and cannot write one without a sheet.
 *
 * @param content the parts of the book's file
 * @param file the file, for messages
 */
record SheetParts(OPCPackage content, Path file) {

    /** @throws UnreadableBookException if a content is missing, or several sheets share one */
    void check() throws UnreadableBookException, InvalidFormatException, IOException {
        PackageRelationshipCollection books = content.getRelationshipsByType(PackageRelationshipTypes.CORE_DOCUMENT);
        PackagePart book = books.size() == 1 ? content.getPart(books.getRelationship(0)) : null;
        if (book == null) {
            return;
        }
        try (InputStream input = book.getInputStream()) {
            CTWorkbook workbook = WorkbookDocument.Factory.parse(input, POIXMLTypeLoader.DEFAULT_XML_OPTIONS)
                    .getWorkbook();
            if (workbook != null && workbook.getSheets() != null) {
                check(book, workbook.getSheets().getSheetArray());
            }
        } catch (XmlException otherKind) {
            throw new IOException(otherKind);
        }
    }

    private void check(PackagePart book, CTSheet[] sheets) throws UnreadableBookException, InvalidFormatException {
        Map<PackagePartName, String> contents = new HashMap<>();
        for (CTSheet sheet : sheets) {
            PackageRelationship relation = book.getRelationship(sheet.getId());
            PackagePartName part = relation == null ? null : PackagingURIHelper.createPartName(relation.getTargetURI());
            if (part == null || !content.containPart(part)) {
                throw bad("the content of its sheet \"" + sheet.getName() + "\" is missing");
            }
            String other = contents.putIfAbsent(part, sheet.getName());
            if (other != null) {
                throw bad("its sheets \"" + other + "\" and \"" + sheet.getName() + "\" share the same content");
            }
        }
        for (PackageRelationship sheet : book.getRelationshipsByType(XSSFRelation.WORKSHEET.getRelation())) {
            PackagePartName part = PackagingURIHelper.createPartName(sheet.getTargetURI());
            if (!contents.containsKey(part)) {
                String name = part.getName().substring(1);
                throw UnreadableBookException.damagedPart(file, name, "is missing from the list of sheets");
            }
        }
    }

    private UnreadableBookException bad(String wrong) {
        return new UnreadableBookException(file, "the file is damaged: " + wrong + "; use an earlier copy.");
    }
}
