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
import org.bagwright.workbook.schema.ResultSheets;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorkbookDocument;

/**
 * Takes the rows out of the sheet Settings of an earlier run before a book is read into memory: nothing reads them, they
 * are made anew, and they are most of a large book.
 */
public final class OldSettingsRemover {
    private static final byte[] NO_ROWS = ("<?xml version=\"1.0\" encoding=\"UTF-8\"?><worksheet"
                    + " xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData/></worksheet>")
            .getBytes(StandardCharsets.UTF_8);

    private OldSettingsRemover() {}

    /** Leaves a book alone that has no such sheet, or is not as it should be, which its reader says better. */
    public static void empty(OPCPackage content) throws IOException, InvalidFormatException {
        PackageRelationshipCollection books = content.getRelationshipsByType(PackageRelationshipTypes.CORE_DOCUMENT);
        PackagePart book = books.size() == 1 ? content.getPart(books.getRelationship(0)) : null;
        Optional<CTSheet> settings = book == null ? Optional.empty() : settings(book);
        if (settings.isPresent()) {
            PackageRelationship place = book.getRelationship(settings.get().getId());
            if (place != null) {
                empty(content, PackagingURIHelper.createPartName(place.getTargetURI()));
            }
        }
    }

    private static Optional<CTSheet> settings(PackagePart book) throws IOException {
        try (InputStream input = book.getInputStream()) {
            CTWorkbook workbook = WorkbookDocument.Factory.parse(input, POIXMLTypeLoader.DEFAULT_XML_OPTIONS)
                    .getWorkbook();
            CTSheet[] sheets = workbook.getSheets().getSheetArray();
            return IntStream.range(0, sheets.length)
                    .filter(index -> sheets[index].getName().equals("Settings") && isMarked(workbook, index))
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
                                && name.getName().equals(ResultSheets.MARK));
    }

    /** A sheet that holds more than rows, such as a picture or a note that the fitter put there, stays as it is. */
    private static void empty(OPCPackage content, PackagePartName name) throws IOException, InvalidFormatException {
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
