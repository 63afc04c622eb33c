package org.bagwright.faults;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** What is in a folder after a fault, and whether anything was lost. */
final class Aftermath {
    private final Path book;
    private final byte[] before;
    private final Whole whole;
    private final List<Path> files;

    private Aftermath(Path book, byte[] before, Whole whole, List<Path> files) {
        this.book = book;
        this.before = before;
        this.whole = whole;
        this.files = files;
    }

    /** What a whole new book is known by: another book whose cells it has, and a sheet that it has. */
    static final class Whole {
        private final byte[] cells;
        private final String sheet;

        Whole(byte[] cells, String sheet) {
            this.cells = cells.clone();
            this.sheet = sheet;
        }
    }

    /** After a plan, which changes no cell of the old book. */
    static Aftermath of(Path book, byte[] before) throws IOException {
        return of(book, before, new Whole(before, "Plan"));
    }

    static Aftermath of(Path book, byte[] before, Whole whole) throws IOException {
        try (Stream<Path> files = Files.list(book.getParent())) {
            return new Aftermath(book, before, whole, files.sorted().toList());
        }
    }

    /** Whether the book is byte for byte what it was. */
    boolean isOld() throws IOException {
        return Files.exists(book) && Arrays.equals(before, Files.readAllBytes(book));
    }

    List<Path> leftovers() {
        return files.stream()
                .filter(file -> file.getFileName().toString().matches("\\.bagwright-\\d+\\.tmp"))
                .toList();
    }

    /** Whether a temporary file has content. */
    boolean hasFirstByte() {
        return leftovers().stream().anyMatch(file -> file.toFile().length() > 0);
    }

    List<Path> backups() {
        return files.stream()
                .filter(file -> file.getFileName().toString().contains(".backup-"))
                .toList();
    }

    /** Everything that is lost, halved or strange; empty when all is well. */
    List<String> losses() throws IOException {
        List<String> losses = new ArrayList<>();
        boolean kept = isOld();
        if (!kept && !isWholeResult(book)) {
            losses.add("the book is neither the old one nor a whole new one");
        }
        for (Path backup : backups()) {
            boolean old = Arrays.equals(before, Files.readAllBytes(backup));
            kept |= old;
            if (!old && !isWholeResult(backup)) {
                losses.add("incomplete backup: " + backup.getFileName());
            }
        }
        if (!kept) {
            losses.add("no file holds the old book");
        }
        files.stream()
                .filter(file -> !file.equals(book))
                .filter(file -> !backups().contains(file) && !leftovers().contains(file))
                .forEach(file -> losses.add("a stray file: " + file.getFileName()));
        return losses;
    }

    /** Whether a file opens, has the sheet, and has every cell that a whole new book has. */
    private boolean isWholeResult(Path file) {
        try (XSSFWorkbook fresh = new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)));
                XSSFWorkbook old = new XSSFWorkbook(new ByteArrayInputStream(whole.cells))) {
            for (Sheet sheet : old) {
                if (!texts(sheet).equals(texts(fresh.getSheet(sheet.getSheetName())))) {
                    return false;
                }
            }
            return fresh.getSheet(whole.sheet) != null;
        } catch (IOException | RuntimeException broken) {
            return false;
        }
    }

    private static List<String> texts(Sheet sheet) {
        List<String> texts = new ArrayList<>();
        if (sheet != null) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    texts.add(cell.getAddress() + " " + cell.getCellType() + " " + cell);
                }
            }
        }
        return texts;
    }
}
