package org.bagwright.workbook.cells;

import java.util.Optional;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.bagwright.domain.gauge.Correction;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.text.CellContent;

/**
 * The note that a fit of gauge readings leaves on a cell it has written, below the fitter's own words.
 *
 * @param cell the cell
 */
public record GaugeNote(XSSFCell cell) {
    private static final String PHRASE = "Gauged by bagwright: ";
    private static final String PLUS_MINUS = " +- ";
    private static final String BEFORE = "Before: ";
    private static final String FIRST = "At first: ";
    private static final int COLUMNS = 4;
    private static final int ROWS = 7;

    /** Whether a cell still holds the number that a fit has written there, by its note. */
    public static boolean isOn(InputRow row, Column column) {
        return row.content(column) instanceof CellContent.Amount amount
                && row.note(column)
                        .filter(note -> note.contains(PHRASE + shown(amount.valueMeasureUnits()) + PLUS_MINUS))
                        .isPresent();
    }

    public static String shown(double value) {
        return Numbers.trimmed(value, 2);
    }

    /**
     * Writes the note, in place of the one of an earlier fit.
     *
     * @param before what the cell held before
     */
    public void write(Correction correction, String before) {
        XSSFComment note = cell.getCellComment() == null ? made() : cell.getCellComment();
        XSSFRichTextString old = note.getString() == null ? new XSSFRichTextString() : note.getString();
        String all = plain(old);
        int end = all.indexOf(PHRASE);
        String earlier = end < 0 ? "" : all.substring(end);
        XSSFRichTextString text = firstPart(old, end < 0 ? all.length() : end);
        boolean ownWords = !plain(text).isEmpty() && !plain(text).endsWith("\n");
        text.append((ownWords ? "\n\n" : "") + words(correction, before, earlier));
        note.setString(text);
    }

    private static String words(Correction correction, String before, String earlier) {
        String first = line(earlier, FIRST).or(() -> line(earlier, BEFORE)).orElse(before);
        return PHRASE + shown(correction.valueMeasureUnits()) + PLUS_MINUS
                + Numbers.fixed(correction.standardErrorMeasureUnits(), 2) + " "
                + correction.item().unit() + " (one standard error)\n" + correction.source() + "\n" + BEFORE + before
                + (first.equals(before) ? "" : "\n" + FIRST + first);
    }

    private static Optional<String> line(String text, String start) {
        return text.lines()
                .filter(line -> line.startsWith(start))
                .map(line -> line.substring(start.length()))
                .findFirst();
    }

    private static String plain(XSSFRichTextString text) {
        return text.getString() == null ? "" : text.getString();
    }

    /** The first characters of a text with their fonts. */
    private static XSSFRichTextString firstPart(XSSFRichTextString text, int length) {
        XSSFRichTextString part = new XSSFRichTextString();
        if (!text.hasFormatting()) {
            part.setString(plain(text).substring(0, length));
            return part;
        }
        for (int run = 0; run < text.numFormattingRuns(); run++) {
            int start = text.getIndexOfFormattingRun(run);
            int end = Math.min(length, start + text.getLengthOfFormattingRun(run));
            if (start < end) {
                part.append(text.getString().substring(start, end), text.getFontOfFormattingRun(run));
            }
        }
        return part;
    }

    /** A new note next to the cell; its frame must not begin on a cell that has one already. */
    private XSSFComment made() {
        XSSFSheet sheet = cell.getSheet();
        int row = cell.getRowIndex();
        int column = cell.getColumnIndex();
        boolean free = sheet.getCellComment(new CellAddress(row, column + 1)) == null;
        int left = free ? column + 1 : column;
        XSSFClientAnchor frame = new XSSFClientAnchor(0, 0, 0, 0, left, row, left + COLUMNS, row + ROWS);
        XSSFComment note = sheet.createDrawingPatriarch().createCellComment(frame);
        note.setAuthor("Bagwright");
        cell.setCellComment(note);
        return note;
    }
}
