package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.Broken;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.settings.SheetColumn;

/** The words and headings over the slots of the sheet Plan: title, how good the plan is, what a person may do. */
final class PlanHeadings {
    private static final int MOST_BROKEN = 3;
    /** With several golfers, whose own lines of totals say more. */
    private static final int MOST_BROKEN_OF_SEVERAL = 1;

    private static final int WORDS_ROW = 3;
    /** A longer title needs the room of the hint next to it. */
    private static final int LONG_TITLE = 32;

    /** What a line of text holds from one side of the screen to the other. */
    private static final double LINE_CHARS = 180;

    private static final double TITLE_POINTS = 20;
    static final double HEADING_POINTS = 52;
    private static final double GAP_POINTS = 3;

    private final SheetPen pen;
    private final BookResult result;
    private final PlanLayout layout;
    private final int row;

    /** @param row the row of the headings, under that of the titles of groups */
    PlanHeadings(SheetPen pen, BookResult result, PlanLayout layout, int row) {
        this.pen = pen;
        this.result = result;
        this.layout = layout;
        this.row = row;
    }

    void write() {
        String title = result.book().settings().title().orElse("The plan");
        pen.text(0, layout.firstShown().index(), Role.TITLE, title);
        if (title.length() <= LONG_TITLE) {
            pen.text(0, PlanColumn.LIVE_SITS.index(), Role.FAINT, howTo());
        }
        pen.height(0, TITLE_POINTS);
        String words = proof() + " Plan: " + broken(BagResult::planned) + " Today: " + broken(BagResult::today);
        int first = layout.firstShown().index();
        pen.text(WORDS_ROW, first, Role.WRAPPED, words);
        pen.merge(WORDS_ROW, WORDS_ROW, first, PlanColumn.CHART.index());
        pen.height(WORDS_ROW, PlanSheet.LINE_POINTS * Math.ceil(words.length() / LINE_CHARS));
        pen.height(WORDS_ROW + 1, GAP_POINTS);
        headings();
    }

    private void headings() {
        List<SheetColumn> columns = layout.columns();
        int groupStart = 0;
        for (SheetColumn column : columns) {
            pen.heading(row, column.index(), heading(column.heading()), layout.widthChars(column));
            if (!column.group().equals(columns.get(groupStart).group())) {
                group(groupStart, column.index() - 1);
                groupStart = column.index();
            }
        }
        group(groupStart, columns.size() - 1);
        pen.height(row - 1, PlanSheet.LINE_POINTS);
        pen.height(row, HEADING_POINTS);
    }

    private String heading(String text) {
        Units units = result.book().settings().units();
        String club = PlanColumn.TODAY_CLUB.heading();
        return (text.equals(club) && layout.hasCandidates() ? "Club today" : text)
                .replace("DIST", units.distance().label())
                .replace("LEN", units.length().label());
    }

    /** The title of a group is in its first column that is shown, if there is any: a hidden one would swallow it. */
    private void group(int first, int last) {
        List<SheetColumn> columns = layout.columns();
        String title = columns.get(first).group();
        if (!title.isEmpty()) {
            int shown = IntStream.rangeClosed(first, last)
                    .filter(column -> !layout.isHidden(columns.get(column)))
                    .findFirst()
                    .orElse(first);
            for (int column = first; column <= last; column++) {
                pen.blank(row - 1, column, Role.GROUP);
            }
            pen.text(row - 1, shown, Role.GROUP, heading(title));
        }
    }

    private String broken(Function<BagResult, BagState> state) {
        List<Broken> broken = result.broken(state);
        if (broken.isEmpty()) {
            return VerdictLine.ALL_KEPT;
        }
        int most = result.bags().size() > 1 ? MOST_BROKEN_OF_SEVERAL : MOST_BROKEN;
        String first = broken.stream().limit(most).map(Broken::inWords).collect(Collectors.joining("; "));
        int more = broken.size() - most;
        return first + (more > 0 ? "; and " + more + " more." : ".");
    }

    private String proof() {
        if (result.plannedBreaks() > 0) {
            return result.verdict().sentence() + " (" + String.join(", ", result.plannedBroken())
                    + "): see the sheet Messages.";
        }
        if (result.proven()) {
            return "Proven best: no other choice scores lower.";
        }
        double above = result.plannedPoints() - result.boundPoints();
        return "At most " + Numbers.fixed(above, 2) + " points above the best possible.";
    }

    /** What a person may do on the sheet. */
    private String howTo() {
        String text = "Pick in the framed cells: the rest follows. Pin = yes: the next plan keeps your choice.";
        return layout.hasCandidates() ? text + " \"" + Option.LEFT_OUT + "\": an empty slot." : text;
    }
}
