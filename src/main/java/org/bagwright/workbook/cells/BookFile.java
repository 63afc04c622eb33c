package org.bagwright.workbook.cells;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.poi.UnsupportedFileFormatException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Message;
import org.bagwright.files.OtherProgram;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTSheet;

/** Opens a fitter's file from a copy in memory, so that it may stay open in a spreadsheet program meanwhile. */
public final class BookFile {
    private static final long MOST_BYTES = 200L << 20;
    /** Memory that the library takes for a sheet against its size in the file, unpacked: measured 32 with a cell a row. */
    private static final long MEMORY_PER_SHEET = 25;

    private static final String SAVE_AS = " Open it in a spreadsheet program and save it as an .xlsx workbook.";

    private static final String OTHER_KIND = "this is no .xlsx workbook but a file of another kind." + SAVE_AS;

    private static final String DAMAGED = "the file is damaged or incomplete, or no .xlsx workbook inside; take an"
            + " earlier copy, or repair it in a spreadsheet program.";

    static {
        // The guard against zip bombs allows 1000 parts; an honest team book of 200 sheets with charts and notes has
        // more.
        ZipSecureFile.setMaxFileCount(20_000);
    }

    private final Path file;

    private BookFile(Path file) {
        this.file = file;
    }

    /**
     * Opens a workbook for reading; the file itself is never opened for writing.
     *
     * @throws UnreadableBookException if the file is missing, protected, damaged or of another kind
     */
    public static XSSFWorkbook open(Path file) throws UnreadableBookException {
        BookFile book = new BookFile(file);
        byte[] bytes = book.bytes();
        book.checkKind(bytes);
        return book.workbook(bytes);
    }

    private byte[] bytes() throws UnreadableBookException {
        try {
            if (Files.isDirectory(file)) {
                throw bad("this is a folder; expected an .xlsx workbook.");
            }
            if (Files.isSymbolicLink(file) && !Files.exists(file)) {
                throw bad("this is a link that leads nowhere; expected an .xlsx workbook.");
            }
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                throw bad("this is a device or a pipe; expected an .xlsx workbook.");
            }
            if (Files.size(file) > MOST_BYTES) {
                throw bad("the file is larger than 200 MB; expected a smaller .xlsx workbook.");
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException missing) {
            throw bad("there is no such file; expected an .xlsx workbook." + new NearbyBooks(file).maybe());
        } catch (AccessDeniedException denied) {
            throw bad("the file may not be read: you lack the permission, or another program has locked it.");
        } catch (FileSystemException failed) {
            throw bad(
                    new OtherProgram(file).from(failed).isPresent()
                            ? "another program has locked the file. Close it there, then try again."
                            : "the file cannot be read: " + failed.getReason());
        } catch (IOException failed) {
            throw bad("the file cannot be read: " + failed.getMessage());
        }
    }

    private void checkKind(byte[] bytes) throws UnreadableBookException {
        if (bytes.length == 0) {
            throw bad("the file is empty; expected an .xlsx workbook.");
        }
        switch (FileMagic.valueOf(bytes)) {
            case OOXML -> checkZip(bytes);
            case OLE2 -> throw bad(oldOrProtected(bytes));
            case XML, HTML -> throw bad("this is a web page or an XML file, not an .xlsx workbook." + SAVE_AS);
            case PDF -> throw bad("this is a PDF, not an .xlsx workbook.");
            default -> throw bad("this is no .xlsx workbook but something else, such as CSV text." + SAVE_AS);
        }
    }

    /** A zip cut short may still open as a stream with its last parts missing, so its list of parts is asked first. */
    private void checkZip(byte[] bytes) throws UnreadableBookException {
        try (ZipFile zip = ZipFile.builder().setByteArray(bytes).get()) {
            if (isOpenDocument(zip)) {
                throw bad("this is an OpenDocument file (.ods), not an .xlsx workbook." + SAVE_AS);
            }
            if (zip.getEntry("[Content_Types].xml") == null) {
                throw bad(OTHER_KIND);
            }
        } catch (IOException | RuntimeException broken) {
            throw bad(DAMAGED);
        }
    }

    private static boolean isOpenDocument(ZipFile zip) throws IOException {
        ZipArchiveEntry kind = zip.getEntry("mimetype");
        if (kind == null) {
            return false;
        }
        try (InputStream in = zip.getInputStream(kind)) {
            String text = new String(in.readNBytes(100), StandardCharsets.US_ASCII);
            return text.startsWith("application/vnd.oasis.opendocument");
        }
    }

    private static String oldOrProtected(byte[] bytes) {
        try (POIFSFileSystem files = new POIFSFileSystem(new ByteArrayInputStream(bytes))) {
            if (files.getRoot().hasEntryCaseInsensitive(Decryptor.DEFAULT_POIFS_ENTRY)) {
                return "the workbook is protected by a password; save a copy of it without a password.";
            }
            return "this is a file of the old .xls kind, not an .xlsx workbook." + SAVE_AS;
        } catch (IOException | RuntimeException damaged) {
            return "this is a damaged file of the old .xls kind; expected an .xlsx workbook.";
        }
    }

    private XSSFWorkbook workbook(byte[] bytes) throws UnreadableBookException {
        try {
            OPCPackage content = OPCPackage.open(new ByteArrayInputStream(bytes));
            checkTexts(content);
            OldSettingsRemover.empty(content);
            checkSize(content);
            XSSFWorkbook workbook = new XSSFWorkbook(content);
            checkWhole(workbook);
            Optional<String> wrongName = BookKind.wrongName(workbook, file);
            if (wrongName.isPresent()) {
                throw bad(wrongName.get());
            }
            checkPlaces(workbook);
            return workbook;
        } catch (UnsupportedFileFormatException other) {
            throw bad(OTHER_KIND);
        } catch (InvalidFormatException | IOException | RuntimeException broken) {
            boolean strict = String.valueOf(broken.getMessage()).contains("Strict OOXML");
            throw bad(
                    strict ? "this is a workbook of the Strict kind; save it as an ordinary .xlsx workbook." : DAMAGED);
        }
    }

    /** Better a word at once than minutes without memory. */
    private void checkSize(OPCPackage content) throws UnreadableBookException, IOException {
        long sheetBytes = 0;
        for (PackagePart sheet : content.getPartsByContentType(XSSFRelation.WORKSHEET.getContentType())) {
            try (InputStream in = sheet.getInputStream()) {
                sheetBytes += in.transferTo(OutputStream.nullOutputStream());
            }
        }
        if (sheetBytes > Runtime.getRuntime().maxMemory() / MEMORY_PER_SHEET) {
            throw bad(
                    "its sheets are too large for the memory that is there. Delete the rows that hold nothing but looks,"
                            + " or take a machine with more memory.");
        }
    }

    /** What POI passes over when it opens a book and stumbles over later. */
    private void checkWhole(XSSFWorkbook workbook) throws UnreadableBookException, InvalidFormatException {
        if (!BookKind.isWorkbook(workbook)) {
            throw bad(OTHER_KIND);
        }
        checkSheets(workbook);
        workbook.getProperties();
        if (workbook.getNumCellStyles() == 0) {
            throw bad(DAMAGED);
        }
    }

    private void checkSheets(XSSFWorkbook workbook) throws UnreadableBookException, InvalidFormatException {
        Map<PackagePartName, String> contents = new HashMap<>();
        for (CTSheet sheet : workbook.getCTWorkbook().getSheets().getSheetArray()) {
            PackageRelationship relation = workbook.getPackagePart().getRelationship(sheet.getId());
            PackagePartName content =
                    relation == null ? null : PackagingURIHelper.createPartName(relation.getTargetURI());
            if (content == null || !workbook.getPackage().containPart(content)) {
                throw bad("the file is damaged: the content of its sheet \"" + sheet.getName()
                        + "\" is missing; take an earlier copy.");
            }
            String other = contents.putIfAbsent(content, sheet.getName());
            if (other != null) {
                throw bad("the file is damaged: its sheets \"" + other + "\" and \"" + sheet.getName()
                        + "\" share one content; take an earlier copy.");
            }
        }
    }

    /** POI passes over texts whose part is missing, and then every cell with a text is blank. */
    private void checkTexts(OPCPackage content) throws UnreadableBookException, InvalidFormatException {
        for (PackagePart part : content.getParts()) {
            if (!part.isRelationshipPart()) {
                for (PackageRelationship texts :
                        part.getRelationshipsByType(XSSFRelation.SHARED_STRINGS.getRelation())) {
                    if (!content.containPart(PackagingURIHelper.createPartName(texts.getTargetURI()))) {
                        throw bad("the file is damaged: the texts of its cells are missing; take an earlier copy.");
                    }
                }
            }
        }
    }

    /** POI takes rows and columns beyond the last, and of two rows or cells in one place it drops the first. */
    private void checkPlaces(XSSFWorkbook workbook) throws UnreadableBookException {
        for (Sheet sheet : workbook) {
            XSSFSheet cells = (XSSFSheet) sheet;
            if (sheet.getFirstRowNum() < -1 || sheet.getLastRowNum() > SpreadsheetVersion.EXCEL2007.getLastRowIndex()) {
                throw damaged(sheet, "a row that no sheet can have");
            }
            if (cells.getCTWorksheet().getSheetData().sizeOfRowArray() > sheet.getPhysicalNumberOfRows()) {
                throw damaged(sheet, "a row twice");
            }
            for (Row row : sheet) {
                if (row.getLastCellNum() > SpreadsheetVersion.EXCEL2007.getMaxColumns()) {
                    throw damaged(sheet, "a column that no sheet can have");
                }
                if (((XSSFRow) row).getCTRow().sizeOfCArray() > row.getPhysicalNumberOfCells()) {
                    throw damaged(sheet, "a cell twice in row " + (row.getRowNum() + 1));
                }
            }
        }
    }

    private UnreadableBookException damaged(Sheet sheet, String has) {
        return bad("the file is damaged: its sheet \"" + sheet.getSheetName() + "\" has " + has
                + "; take an earlier copy.");
    }

    private UnreadableBookException bad(String text) {
        Path name = file.getFileName();
        return new UnreadableBookException(Message.problem(name == null ? file.toString() : name.toString(), text));
    }
}
