package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.compare.ComparedBook;
import org.bagwright.domain.compare.Comparison;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.text.ListText;
import org.bagwright.workbook.pen.BookStyles;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;

/** A book of its own with the sheet Compare: each golfer in several books, figures first, then what differs. */
public final class CompareBook {
    static final String NAME = "Compare";

    private static final int FIRST_MEASURE = 9;
    private static final int LAST = FIRST_MEASURE + Measure.values().length;
    private static final int LONG_LABEL_CHARS = 8;

    private final SheetPen pen;
    private final TablePen table;
    private final Comparison comparison;

    private CompareBook(SheetPen pen, Comparison comparison) {
        this.pen = pen;
        this.comparison = comparison;
        this.table = new TablePen(
                pen, comparison.books().get(0).result().book().settings().units());
    }

    /**
     * Writes the book.
     *
     * @throws IOException if the target cannot be written
     */
    public static void write(Comparison comparison, OutputStream target) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            BookStyles styles = new BookStyles(workbook);
            SheetPen pen = new SheetPen(workbook.createSheet(NAME), styles);
            new CompareBook(pen, comparison).sheet();
            pen.protect();
            SheetPen clubs = new SheetPen(workbook.createSheet(ComparedClubsSheet.NAME), styles);
            new ComparedClubsSheet(clubs, comparison).write();
            clubs.protect();
            sign(workbook.getProperties(), comparison);
            workbook.write(target);
        }
    }

    private static void sign(POIXMLProperties properties, Comparison comparison) {
        List<String> books = comparison.books().stream().map(ComparedBook::name).toList();
        properties.getCoreProperties().setCreator(BookTitle.TOOL);
        properties.getCoreProperties().setTitle("Compared: " + ListText.allOf(books));
        properties.getExtendedProperties().getUnderlyingProperties().setApplication(BookTitle.TOOL);
    }

    private void sheet() {
        table.title(
                NAME,
                "Each book planned again from its own sheets. Distances in " + table.inDistance("the unit of the first")
                        + ". Gap unevenness: root mean square of gap minus wish.");
        headings();
        int row = TablePen.HEADING_ROW + 1;
        for (String golfer : comparison.golfers()) {
            row = golfer(golfer, row) + 1;
        }
        table.finish(1, row, LAST);
    }

    private void headings() {
        List<String> headings = new ArrayList<>(List.of(
                "Golfer and book",
                "State",
                table.inDistance("Gap unevenness"),
                "Worst miss [tolerances]",
                "Worst miss of",
                "Penalty [points]",
                "Musts missed by [tolerances]",
                "Changes [items]",
                "Proven best"));
        for (Measure measure : Measure.values()) {
            headings.add(measure.heading() + " [points]");
        }
        headings.add("Above the best possible, at most [points]");
        table.headings(TablePen.HEADING_ROW, headings, 56);
        table.widths(26, 10, 12, 12, 22, 11, 12, 10, 10);
        for (Measure measure : Measure.values()) {
            pen.width(FIRST_MEASURE + measure.ordinal(), measure.label().length() > LONG_LABEL_CHARS ? 13 : 10);
        }
        pen.width(LAST, 13);
    }

    /** Writes one golfer from a row on and gives the row after it. */
    private int golfer(String golfer, int first) {
        table.band(first, LAST, golfer);
        int row = first + 1;
        for (ComparedBook book : comparison.books()) {
            Optional<BagResult> bag = book.bagOf(golfer);
            if (bag.isEmpty()) {
                pen.text(row, 0, Role.TEXT, book.name());
                pen.text(row++, 1, Role.PLAIN, "has no bag for this golfer");
            } else {
                state(row++, book, bag.get(), "today", bag.get().today());
                state(row++, book, bag.get(), "planned", bag.get().planned());
            }
        }
        return new DifferenceTable(pen, comparison).write(golfer, row);
    }

    private void state(int row, ComparedBook book, BagResult bag, String label, BagState state) {
        WorstMiss worst = new WorstMiss(bag, state);
        pen.text(row, 0, Role.TEXT, book.name());
        pen.text(row, 1, Role.COUNT, label);
        table.distance(row, 2, Role.NUMBER, state.unevennessM());
        table.number(row, 3, Role.NUMBER, "0.0", worst.toleranceRatio());
        pen.text(row, 4, Role.TEXT, worst.where());
        pen.number(row, 5, Role.NUMBER, TablePen.POINTS, state.score().penaltyPoints());
        table.breaks(row, 6, Role.NUMBER, state.score().hardBreaks());
        pen.number(row, 7, Role.COUNT, "0", bag.changesOf(state));
        measures(row, bag.terms(state));
        proof(row, book.result(), label.equals("planned"));
    }

    private void measures(int row, Terms terms) {
        for (Measure measure : Measure.values()) {
            int column = FIRST_MEASURE + measure.ordinal();
            pen.number(row, column, Role.NUMBER, TablePen.POINTS, terms.points(measure));
        }
    }

    /** Whether a plan is proven best, and if not how far it is above the bound; both blank for today's bag. */
    private void proof(int row, BookResult result, boolean planned) {
        pen.text(row, 8, Role.COUNT, planned ? (result.proven() ? "yes" : "no") : "");
        if (planned && !result.proven()) {
            double abovePoints = result.plannedPoints() - result.boundPoints();
            pen.number(row, LAST, Role.NUMBER, TablePen.POINTS, abovePoints);
        } else {
            pen.blank(row, LAST, Role.NUMBER);
        }
    }
}
