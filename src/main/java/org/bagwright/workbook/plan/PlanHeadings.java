package org.bagwright.workbook.plan;

import static org.bagwright.workbook.pen.BookStyles.Role;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bagwright.workbook.settings.SheetColumn;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.Broken;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Units;
import org.bagwright.workbook.pen.SheetPen;
import org.bagwright.workbook.schema.ResultSheet;

/** The rows over the slots of the sheet Plan: how good the plan is, what a person may do, and the headings. */
final class PlanHeadings {
    private static final int MOST_BROKEN = 3;

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
        pen.text(0, 0, Role.TITLE, result.book().settings().title().orElse("The plan"));
        pen.text(1, 0, Role.PLAIN, verdict());
        pen.text(2, 0, Role.PLAIN, broken());
        pen.text(4, 0, Role.SUBTITLE, howTo() + ResultSheet.REBUILT);
        pen.merge(4, 4, 0, PlanColumn.PLANNED_PENALTY.index());
        pen.height(4, 39);
        List<SheetColumn> columns = layout.columns();
        int groupStart = 0;
        for (SheetColumn column : columns) {
            pen.heading(row, column.index(), heading(column), column.widthChars());
            if (!column.group().equals(columns.get(groupStart).group())) {
                group(groupStart, column.index() - 1);
                groupStart = column.index();
            }
        }
        group(groupStart, columns.size() - 1);
        pen.height(row, 54);
    }

    private String heading(SheetColumn column) {
        Units units = result.book().settings().units();
        String text = column == PlanColumn.TODAY_CLUB && layout.hasCandidates() ? "Club today" : column.heading();
        return text.replace("DIST", units.distance().label())
                .replace("LEN", units.length().label());
    }

    /** The title of a group is in its first column that is shown, so that a hidden one does not swallow it. */
    private void group(int first, int last) {
        List<SheetColumn> columns = layout.columns();
        String title = columns.get(first).group();
        if (!title.isEmpty()) {
            int shown = first;
            while (shown < last && layout.isHidden(columns.get(shown))) {
                shown++;
            }
            for (int column = first; column <= last; column++) {
                pen.blank(row - 1, column, Role.GROUP);
            }
            pen.text(row - 1, shown, Role.GROUP, title);
        }
    }

    /** How good the plan is, in one line. */
    private String verdict() {
        String planned = Numbers.fixed(result.plannedPoints(), 2);
        String text = "Planned penalty " + planned + " points, against " + Numbers.fixed(result.todayPoints(), 2)
                + " today. " + proof();
        return result.plannedBreaks() > 0
                ? text + " " + result.verdict().sentence() + " (" + String.join(", ", result.plannedBroken())
                        + "): see the sheet Messages."
                : text;
    }

    /** What the plan breaks, and today's bag, in a line. */
    private String broken() {
        return "Plan: " + broken(BagResult::planned) + "  Today: " + broken(BagResult::today);
    }

    private String broken(Function<BagResult, BagState> state) {
        List<Broken> broken = result.broken(state);
        if (broken.isEmpty()) {
            return VerdictLine.ALL_KEPT;
        }
        String first = broken.stream().limit(MOST_BROKEN).map(Broken::inWords).collect(Collectors.joining("; "));
        int more = broken.size() - MOST_BROKEN;
        return first + (more > 0 ? "; and " + more + " more." : ".");
    }

    private String proof() {
        if (result.proven()) {
            return "Proven best: no other choice scores lower.";
        }
        double above = result.plannedPoints() - result.boundPoints();
        return "At most " + Numbers.fixed(above, 2) + " points above the best possible.";
    }

    /** What a person may do on the sheet. */
    private String howTo() {
        String text = "Pick another setting in the framed cells of \"Your choice\": everything under \"Live\" follows. "
                + "Pin = yes: the next plan keeps your choice in that row. "
                + "What you change under \"Wanted\" and in the table of measures counts in the next plan too. ";
        return layout.hasCandidates()
                ? text + "For another club, pick its setting, weighting and bends too. Blank means as in the book."
                        + " \"" + Option.LEFT_OUT + "\" leaves the slot empty. "
                : text;
    }
}
