package org.bagwright.workbook.cells;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.apache.poi.UnsupportedFileFormatException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.files.OtherProgram;
import org.bagwright.files.SourceFile;

/** Opens a fitter's file from a copy in memory, so that it may stay open in a spreadsheet program. */
public final class BookFile {
    private static final long MOST_BYTES = 200L << 20;

    private final SourceFile source;
    private final Path file;

    private BookFile(SourceFile source) {
        this.source = source;
        this.file = source.path();
    }

    /**
     * Opens a workbook for reading; the file itself is never opened for writing.
     *
     * @throws UnreadableBookException if the file is missing, protected, damaged or of another kind
     */
    public static XSSFWorkbook open(SourceFile source) throws UnreadableBookException {
        BookFile book = new BookFile(source);
        byte[] bytes = book.bytes();
        book.checkKind(bytes);
        return book.workbook(bytes);
    }

    /**
     * Opens a workbook that is known to be sound once more, from the same bytes and with everything in it.
     *
     * @throws IOException if the file was not read before and cannot be read now
     */
    public static XSSFWorkbook openAgain(SourceFile source) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(source.bytes()));
    }

    /**
     * As {@link #openAgain} without the rows that {@link OldSettings} removes.
     *
     * @throws IOException as {@link #openAgain}
     */
    public static XSSFWorkbook openForNewResult(SourceFile source) throws IOException {
        try {
            OPCPackage content = OPCPackage.open(new ByteArrayInputStream(source.bytes()));
            new OldSettings(content).empty();
            return new XSSFWorkbook(content);
        } catch (InvalidFormatException damaged) {
            throw new IOException("the book is damaged", damaged);
        }
    }

    private byte[] bytes() throws UnreadableBookException {
        checkPlace();
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw bad("the file is larger than 200 MB; expected a smaller .xlsx workbook.");
            }
            return source.bytes();
        } catch (NoSuchFileException missing) {
            throw bad("there is no such file; expected an .xlsx workbook." + new NearbyBooks(file).maybe());
        } catch (AccessDeniedException denied) {
            throw bad("you have no permission to read the file, or another program has locked it.");
        } catch (FileSystemException failed) {
            throw bad(
                    new OtherProgram(file).from(failed).isPresent()
                            ? "another program has locked the file. Close it there, then try again."
                            : "the file cannot be read: " + failed.getReason());
        } catch (IOException failed) {
            throw bad("the file cannot be read: " + failed.getMessage());
        }
    }

    private void checkPlace() throws UnreadableBookException {
        if (Files.isDirectory(file)) {
            throw bad("this is a folder; expected an .xlsx workbook.");
        }
        if (Files.isSymbolicLink(file) && !Files.exists(file)) {
            throw bad("this is a broken link; expected an .xlsx workbook.");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw bad("this is a device or a pipe; expected an .xlsx workbook.");
        }
    }

    private void checkKind(byte[] bytes) throws UnreadableBookException {
        if (bytes.length == 0) {
            throw bad("the file is empty; expected an .xlsx workbook.");
        }
        switch (FileMagic.valueOf(bytes)) {
            case OOXML -> new PackedParts(bytes, file).check();
            case OLE2 -> throw bad(oldOrProtected(bytes));
            case XML, HTML ->
                throw bad(
                        "this is a web page or an XML file, not an .xlsx workbook." + UnreadableBookException.SAVE_AS);
            case PDF -> throw bad("this is a PDF, not an .xlsx workbook.");
            default ->
                throw bad("this is not an .xlsx workbook but something else, such as CSV text."
                        + UnreadableBookException.SAVE_AS);
        }
    }

    private static String oldOrProtected(byte[] bytes) {
        try (POIFSFileSystem files = new POIFSFileSystem(new ByteArrayInputStream(bytes))) {
            if (files.getRoot().hasEntryCaseInsensitive(Decryptor.DEFAULT_POIFS_ENTRY)) {
                return "the workbook is protected by a password; save a copy of it without a password.";
            }
            return "this is an old .xls file, not an .xlsx workbook." + UnreadableBookException.SAVE_AS;
        } catch (IOException | RuntimeException damaged) {
            return "this is a damaged old .xls file; expected an .xlsx workbook.";
        }
    }

    private XSSFWorkbook workbook(byte[] bytes) throws UnreadableBookException {
        try {
            OPCPackage content = OPCPackage.open(new ByteArrayInputStream(bytes));
            BookParts parts = new BookParts(content, file);
            parts.checkMissing();
            new SheetParts(content, file).check();
            new OldSettings(content).empty();
            parts.checkSize();
            XSSFWorkbook workbook = new XSSFWorkbook(content);
            new DamageCheck(workbook, file).check();
            return workbook;
        } catch (OutOfMemoryError full) {
            throw bad("it needs more memory than there is. Delete rows and sheets that hold nothing but formatting, or"
                    + " use a machine with more memory.");
        } catch (StackOverflowError deep) {
            throw UnreadableBookException.damaged(file);
        } catch (UnsupportedFileFormatException other) {
            throw UnreadableBookException.otherKind(file);
        } catch (InvalidFormatException | IOException | RuntimeException broken) {
            if (String.valueOf(broken.getMessage()).contains("Strict OOXML")) {
                throw bad("this workbook is in the Strict format; save it as a normal .xlsx workbook.");
            }
            throw UnreadableBookException.damaged(file);
        }
    }

    private UnreadableBookException bad(String text) {
        return new UnreadableBookException(file, text);
    }
}
