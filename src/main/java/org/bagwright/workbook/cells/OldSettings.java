package org.bagwright.workbook.cells;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.stream.IntStream;
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
import org.bagwright.workbook.schema.ResultSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorkbookDocument;

/**
 * The sheet Settings of an earlier run, in a book that is not yet in memory. Nothing reads its rows, every run replaces
 * them, and they are most of a large book.
 *
 * @param content the parts of the book's file
 */
public record OldSettings(OPCPackage content) {
    private static final byte[] NO_ROWS = ("<?xml version=\"1.0\" encoding=\"UTF-8\"?><worksheet"
                    + " xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData/></worksheet>")
            .getBytes(StandardCharsets.UTF_8);

    /** Removes its rows. A book without such a sheet stays as it is, and so does a damaged one, which its reader reports. */
    public void empty() throws IOException, InvalidFormatException {
        PackageRelationshipCollection books = content.getRelationshipsByType(PackageRelationshipTypes.CORE_DOCUMENT);
        PackagePart book = books.size() == 1 ? content.getPart(books.getRelationship(0)) : null;
        Optional<CTSheet> settings = book == null ? Optional.empty() : settings(book);
        if (settings.isPresent()) {
            PackageRelationship place = book.getRelationship(settings.get().getId());
            if (place != null) {
                empty(PackagingURIHelper.createPartName(place.getTargetURI()));
            }
        }
    }

    private static Optional<CTSheet> settings(PackagePart book) throws IOException {
        try (InputStream input = book.getInputStream()) {
            CTWorkbook workbook = WorkbookDocument.Factory.parse(input, POIXMLTypeLoader.DEFAULT_XML_OPTIONS)
                    .getWorkbook();
            CTSheet[] sheets = workbook.getSheets().getSheetArray();
            return IntStream.range(0, sheets.length)
                    .filter(index -> sheets[index].getName().equals(ResultSheet.SETTINGS.sheetName())
                            && isMarked(workbook, index))
                    .mapToObj(index -> sheets[index])
                    .findFirst();
        } catch (XmlException broken) {
            return Optional.empty();
        }
    }

    private static boolean isMarked(CTWorkbook workbook, int sheet) {
        return workbook.isSetDefinedNames()
                && workbook.getDefinedNames().getDefinedNameList().stream()
                        .anyMatch(name -> name.isSetLocalSheetId()
                                && name.getLocalSheetId() == sheet
                                && name.getName().equals(ResultSheet.MARK));
    }

    /** A sheet with more than rows, such as a picture or a note that the fitter put there, stays as it is. */
    private void empty(PackagePartName name) throws IOException, InvalidFormatException {
        PackagePart part = content.getPart(name);
        if (part != null
                && part.getContentType().equals(XSSFRelation.WORKSHEET.getContentType())
                && part.getRelationships().isEmpty()) {
            content.removePart(name);
            try (OutputStream output = content.createPart(name, XSSFRelation.WORKSHEET.getContentType())
                    .getOutputStream()) {
                output.write(NO_ROWS);
            }
        }
    }
}
