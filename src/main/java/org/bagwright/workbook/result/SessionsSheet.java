package org.bagwright.workbook.result;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.apache.poi.ss.usermodel.DateUtil;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.session.ClubSession;
import org.bagwright.domain.session.Forecast;
import org.bagwright.domain.session.ShotFigure;
import org.bagwright.domain.session.Summary;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.DateChart;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.pen.TablePen;
import org.bagwright.workbook.schema.ResultSheet;

/** The sheet Sessions: what each golfer hit on which day, what was predicted of it, and how it came out. */
final class SessionsSheet {
    static final String NAME = "Sessions";

    private static final int CLUB = 0;
    private static final int DATE = 1;
    private static final int SET_UP = 2;
    private static final int SHOTS = 3;
    private static final int CARRY = 4;
    private static final int PREDICTED = 6;
    private static final int DAY = 7;
    private static final int OFF = 8;
    private static final int RANGE = 9;
    private static final int WORDS = 10;
    private static final int FIRST_FIGURE = 11;
    private static final int CHART_ROWS = 34;
    private static final double SET_UP_CHARS = 24;
    private static final String DATE_FORMAT = "yyyy-mm-dd";

    private static final List<String> NOTES = List.of(
            "Predicted: from the golfer's shots of earlier days alone. Shots without a date count as the first day.",
            "Day: what his other clubs show of that day. Off by: the mean of the shots less both; strays count less in it.",
            "+/-: 19 of 20 sessions are off by less where nothing has changed. Spread: standard deviation of single shots.");

    private final SheetPen pen;
    private final TablePen table;
    private final BookResult result;
    private final Units units;
    private final List<ShotFigure> figures;

    SessionsSheet(SheetPen pen, BookResult result) {
        this.pen = pen;
        this.result = result;
        this.units = result.book().settings().units();
        this.table = new TablePen(pen, units);
        this.figures = Arrays.stream(ShotFigure.values())
                .filter(figure -> figure != ShotFigure.CARRY && isMeasured(figure))
                .toList();
    }

    private boolean isMeasured(ShotFigure figure) {
        return result.bags().stream()
                .flatMap(bag -> bag.sessions().stream())
                .anyMatch(session -> session.summary(figure).isPresent());
    }

    void write() {
        table.title(
                NAME,
                "What was hit on which day, and whether it came out as the days before predict. "
                        + ResultSheet.REBUILT);
        headings();
        List<BagResult> bags =
                result.bags().stream().filter(bag -> !bag.sessions().isEmpty()).toList();
        int row = TablePen.HEADING_ROW + 1;
        for (BagResult bag : bags) {
            row = golfer(bag, row) + 1;
        }
        table.finish(1, row - 2, WORDS);
    }

    private int lastColumn() {
        return Math.max(WORDS, FIRST_FIGURE + 2 * figures.size() - 1);
    }

    private void headings() {
        List<String> headings = new ArrayList<>(List.of(
                "Club",
                "Date",
                "Set-up",
                "Shots",
                table.inDistance("Carry"),
                "Spread",
                table.inDistance("Predicted"),
                table.inDistance("Day"),
                table.inDistance("Off by"),
                table.inDistance("+/-"),
                "Came out"));
        table.widths(16, 11, SET_UP_CHARS, 7, 8, 8, 10, 7, 8, 7, 42);
        for (ShotFigure figure : figures) {
            pen.width(headings.size(), 8);
            headings.add(figure.label() + " [" + figure.unit(units) + "]");
            pen.width(headings.size(), 8);
            headings.add("Spread");
        }
        table.headings(TablePen.HEADING_ROW, headings, 42);
    }

    private int golfer(BagResult bag, int row) {
        table.band(row, lastColumn(), bag.golfer().name());
        int first = row + 1;
        int free = first;
        for (ClubSession session : bag.sessions()) {
            session(session, free++);
        }
        for (String line : NOTES) {
            pen.text(free++, 0, Role.FAINT, line);
        }
        return chart(bag, first, free);
    }

    private void session(ClubSession session, int row) {
        Role role = session.isSurprise() ? Role.MARKED : Role.TEXT;
        pen.text(row, CLUB, Role.TEXT, session.club().name());
        if (session.date().isPresent()) {
            pen.number(
                    row,
                    DATE,
                    Role.COUNT,
                    DATE_FORMAT,
                    DateUtil.getExcelDate(session.date().orElseThrow()));
        } else {
            pen.text(row, DATE, Role.COUNT, "no date");
        }
        String setUp = session.setUpInWords(units.length());
        pen.text(row, SET_UP, Role.CELL, setUp);
        if (setUp.length() > SET_UP_CHARS) {
            pen.height(row, TablePen.heightPoints(setUp, SET_UP_CHARS));
        }
        pen.number(row, SHOTS, Role.COUNT, "0", session.count());
        figure(row, CARRY, ShotFigure.CARRY, session);
        forecast(row, PREDICTED, session, Forecast::predictedM, "0.0");
        forecast(row, DAY, session, Forecast::dayM, "+0.0;-0.0;0.0");
        forecast(row, OFF, session, Forecast::offM, "+0.0;-0.0;0.0");
        forecast(row, RANGE, session, Forecast::rangeM, "0.0");
        pen.text(row, WORDS, role, session.inWords(units.distance()));
        for (int index = 0; index < figures.size(); index++) {
            figure(row, FIRST_FIGURE + 2 * index, figures.get(index), session);
        }
    }

    private void figure(int row, int column, ShotFigure figure, ClubSession session) {
        Optional<Summary> summary = session.summary(figure);
        OptionalDouble mean =
                summary.stream().mapToDouble(Summary::meanMeasureUnits).findFirst();
        OptionalDouble spread = summary.map(Summary::spreadMeasureUnits).orElse(OptionalDouble.empty());
        String format = figure == ShotFigure.SPIN ? "0" : "0.0";
        table.number(row, column, Role.NUMBER, format, figure.shown(mean, units));
        table.number(row, column + 1, Role.NUMBER, format, figure.shown(spread, units));
    }

    private void forecast(int row, int column, ClubSession session, Function<Forecast, Double> valueM, String format) {
        OptionalDouble value = session.forecast().stream()
                .mapToDouble(forecast -> units.distance().fromM(valueM.apply(forecast)))
                .findFirst();
        table.number(row, column, Role.NUMBER, format, value);
    }

    /** A chart of carry by day, where there are two days; gives the first free row. */
    private int chart(BagResult bag, int firstRow, int row) {
        if (!DateChart.isWorthDrawing(bag.sessions())) {
            return row;
        }
        pen.sheet().setRowBreak(row - 1);
        DateChart chart = new DateChart(pen, row, WORDS + 1, CHART_ROWS);
        chart.title("Carry by day, " + bag.golfer().name() + " (dash: predicted)", table.inDistance("Carry"));
        chart.draw(bag.sessions(), units.distance(), firstRow, List.of(DATE, CARRY, PREDICTED));
        return row + CHART_ROWS + 1;
    }
}
