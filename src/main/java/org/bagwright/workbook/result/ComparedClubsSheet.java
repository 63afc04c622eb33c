package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.poi.ss.util.CellRangeAddress;
import org.bagwright.domain.compare.ComparedBook;
import org.bagwright.domain.compare.ComparedClub;
import org.bagwright.domain.compare.ComparedField;
import org.bagwright.domain.compare.ComparedGolfer;
import org.bagwright.domain.compare.Comparison;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;

/** The sheet Side by side of compared books: a row for everything that they say, to be filtered by what differs. */
final class ComparedClubsSheet {
    static final String NAME = "Side by side";

    private static final int FIRST_BOOK = 6;

    private final SheetPen pen;
    private final TablePen table;
    private final Comparison comparison;
    private int row = TablePen.HEADING_ROW + 1;

    ComparedClubsSheet(SheetPen pen, Comparison comparison) {
        this.pen = pen;
        this.comparison = comparison;
        this.table = new TablePen(
                pen, comparison.books().get(0).result().book().settings().units());
    }

    void write() {
        table.title(
                NAME,
                "Everything that the books say of each golfer, in the units of the first. Filter the column Differs.");
        List<String> headings = new ArrayList<>(List.of("Golfer", "Club", "State", "What", "Unit", "Differs"));
        comparison.books().stream().map(ComparedBook::name).forEach(headings::add);
        table.headings(TablePen.HEADING_ROW, headings, 30);
        table.widths(18, 18, 10, 26, 9, 9);
        for (int book = 0; book < comparison.books().size(); book++) {
            pen.width(FIRST_BOOK + book, 20);
        }
        comparison.golfers().stream().filter(this::isCompared).forEach(this::golfer);
        int last = FIRST_BOOK + comparison.books().size() - 1;
        pen.sheet().setAutoFilter(new CellRangeAddress(TablePen.HEADING_ROW, row - 1, 0, last));
        table.finish(2, row - 1, last);
    }

    private boolean isCompared(String golfer) {
        return comparison.books().size() - comparison.without(golfer).size() > 1;
    }

    private void golfer(String name) {
        ComparedGolfer golfer = comparison.golfer(name);
        fields(golfer, name, "", "wishes", golfer.wishes());
        fields(golfer, name, "", "golfer", golfer.conditions());
        fields(golfer, name, "", "points today", golfer.points(BagResult::today));
        fields(golfer, name, "", "points planned", golfer.points(BagResult::planned));
        for (ComparedClub club : golfer.clubs()) {
            fields(golfer, name, club.club(), "set-up", club.setUp());
            fields(golfer, name, club.club(), "today", club.today());
            fields(golfer, name, club.club(), "planned", club.planned());
            fields(golfer, name, club.club(), "sessions", club.sessions());
        }
    }

    private void fields(ComparedGolfer golfer, String name, String club, String state, List<ComparedField> fields) {
        for (ComparedField field : fields) {
            if (field.values().stream().anyMatch(value -> !value.isEmpty())) {
                pen.text(row, 0, Role.TEXT, name);
                pen.text(row, 1, Role.TEXT, club);
                pen.text(row, 2, Role.TEXT, state);
                field(golfer, field);
                row++;
            }
        }
    }

    private void field(ComparedGolfer golfer, ComparedField field) {
        pen.text(row, 3, Role.TEXT, field.what());
        pen.text(row, 4, Role.TEXT, field.unit());
        pen.text(row, 5, Role.COUNT, field.differs() ? "yes" : "");
        for (int book = 0; book < comparison.books().size(); book++) {
            int place = golfer.books().indexOf(comparison.books().get(book).name());
            value(FIRST_BOOK + book, place < 0 ? "" : field.values().get(place), field.differs());
        }
    }

    private void value(int column, String value, boolean differs) {
        Role role = differs ? Role.MARKED : Role.CELL;
        OptionalDouble number = ComparedField.number(value);
        if (number.isPresent()) {
            pen.number(row, column, role, "General", number.getAsDouble());
        } else {
            pen.text(row, column, role, value);
        }
    }
}
