package org.bagwright.workbook.pen;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.bagwright.domain.session.ClubSession;
import org.bagwright.domain.session.ShotFigure;
import org.bagwright.domain.units.LengthUnit;

/** The carries of one golfer over the days on which he hit them: a line for each club, with its name at the last day. */
public final class DateChart {
    private static final String DAY = "yyyy-mm-dd";
    /** Keeps a name clear of its point. */
    private static final String SPACE = "\u2003";
    /** Clubs next to each other look different. */
    private static final List<SeriesLook> LOOKS = List.of(SeriesLook.PLANNED, SeriesLook.ALLOWED);
    /** Steps between the days that are named, at most. */
    private static final int STEPS = 5;

    private final ChartFrame frame;
    private String value = "";

    /** A chart at the left of a sheet from a row on, with a size in columns and rows. */
    public DateChart(SheetPen pen, int row, int columns, int rows) {
        frame = new ChartFrame(pen, 0, row, columns, rows);
        frame.chart().deleteLegend();
    }

    /** Whether there are carries of more than one day. */
    public static boolean isWorthDrawing(List<ClubSession> sessions) {
        return days(sessions).distinct().count() > 1;
    }

    /** The days with carries, as a spreadsheet counts them. */
    private static DoubleStream days(List<ClubSession> sessions) {
        return dated(sessions).stream()
                .mapToDouble(session -> DateUtil.getExcelDate(session.date().orElseThrow()));
    }

    private static List<ClubSession> dated(List<ClubSession> sessions) {
        return sessions.stream()
                .filter(session -> session.date().isPresent())
                .filter(session -> session.summary(ShotFigure.CARRY).isPresent())
                .toList();
    }

    public void title(String text, String axis) {
        frame.title(text);
        value = axis;
    }

    /**
     * Draws sessions that are in rows of the sheet from a first one on, by club and day.
     *
     * @param columns those of the day, the carry and the predicted carry
     */
    public void draw(List<ClubSession> sessions, LengthUnit unit, int firstRow, List<Integer> columns) {
        XDDFScatterChartData data = data(sessions, unit);
        List<Integer> starts = new ArrayList<>();
        for (int from = 0; from < sessions.size(); from++) {
            if (starts(sessions, from)) {
                starts.add(from);
            }
        }
        for (int place = 0; place < starts.size(); place++) {
            int from = starts.get(place);
            int to = last(sessions, from);
            SeriesLook look = LOOKS.get(place % LOOKS.size());
            String club = sessions.get(from).club().name();
            CellRangeAddress days = range(firstRow + from, firstRow + to, columns.get(0));
            var line = add(data, club, look, days, range(firstRow + from, firstRow + to, columns.get(1)));
            line.setLineProperties(look.line());
            ClockChart.label(line.getCTScatterSer(), to - from, List.of(SPACE + club));
            add(
                            data,
                            club + ", predicted",
                            SeriesLook.PREDICTED,
                            days,
                            range(firstRow + from, firstRow + to, columns.get(2)))
                    .setLineProperties(SeriesLook.noLine());
        }
        frame.chart().plot(data);
    }

    /** Whether a session is the first of its club that has a day. */
    private static boolean starts(List<ClubSession> sessions, int index) {
        ClubSession session = sessions.get(index);
        return session.date().isPresent()
                && (index == 0
                        || sessions.get(index - 1).date().isEmpty()
                        || !sessions.get(index - 1).club().equals(session.club()));
    }

    private static int last(List<ClubSession> sessions, int from) {
        int to = from;
        while (to + 1 < sessions.size()
                && sessions.get(to + 1).club().equals(sessions.get(from).club())) {
            to++;
        }
        return to;
    }

    /** The axes: all days with room for names, and carries from a round number below the least. */
    private XDDFScatterChartData data(List<ClubSession> sessions, LengthUnit unit) {
        double first = days(sessions).min().orElseThrow();
        double last = days(sessions).max().orElseThrow();
        double step = Math.max(1, Math.ceil((last - first) / STEPS));
        XDDFValueAxis days = frame.valueAxis(AxisPosition.BOTTOM, "Day", DAY, BookColour.GRID);
        days.setMinimum(first - Math.ceil(step / 4));
        days.setMaximum(last + step);
        days.setMajorUnit(step);
        XDDFValueAxis values = frame.valueAxis(AxisPosition.LEFT, value, "0", BookColour.GRID);
        double leastM = dated(sessions).stream()
                .mapToDouble(session ->
                        session.summary(ShotFigure.CARRY).orElseThrow().meanMeasureUnits())
                .min()
                .orElseThrow();
        values.setMinimum(Math.max(0, Math.floor((unit.fromM(leastM) - 5) / 20) * 20));
        XDDFScatterChartData data = (XDDFScatterChartData) frame.chart().createData(ChartTypes.SCATTER, days, values);
        data.setStyle(ScatterStyle.LINE_MARKER);
        data.setVaryColors(false);
        return data;
    }

    private XDDFScatterChartData.Series add(
            XDDFScatterChartData data, String title, SeriesLook look, CellRangeAddress days, CellRangeAddress carries) {
        var drawn = (XDDFScatterChartData.Series) data.addSeries(frame.numbers(days), frame.numbers(carries));
        drawn.setTitle(title, null);
        drawn.setSmooth(false);
        drawn.setMarkerStyle(look.marker);
        drawn.setMarkerSize(look.size);
        look.paint(drawn.getCTScatterSer().getMarker());
        return drawn;
    }

    private static CellRangeAddress range(int firstRow, int lastRow, int column) {
        return new CellRangeAddress(firstRow, lastRow, column, column);
    }
}
