package org.bagwright.workbook.read;

import java.util.Map;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.UsualFigure;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.schema.ClubColumn;
import org.bagwright.workbook.text.CellContent;
import org.bagwright.workbook.text.NumberTypos;
import org.bagwright.workbook.text.Unit;

/**
 * Warns of figures in a row of Clubs that clubs of its kind do not have, and says which face is assumed.
 *
 * @param row a row in which nothing is wrong
 * @param kind the kind of its club
 * @param golfer whose club it is
 */
record UsualFigures(InputRow row, ClubKind kind, String golfer) {
    private static final Map<ClubColumn, UsualFigure> FIGURES = Map.ofEntries(
            Map.entry(ClubColumn.LOFT, UsualFigure.LOFT),
            Map.entry(ClubColumn.LIE, UsualFigure.LIE),
            Map.entry(ClubColumn.FACE, UsualFigure.FACE),
            Map.entry(ClubColumn.LENGTH, UsualFigure.LENGTH),
            Map.entry(ClubColumn.HEAD_MASS, UsualFigure.HEAD_MASS),
            Map.entry(ClubColumn.CG_HEIGHT, UsualFigure.CG_HEIGHT),
            Map.entry(ClubColumn.CG_DEPTH, UsualFigure.CG_DEPTH),
            Map.entry(ClubColumn.HEAD_INERTIA, UsualFigure.HEAD_INERTIA),
            Map.entry(ClubColumn.SOLE_RADIUS, UsualFigure.SOLE_RADIUS),
            Map.entry(ClubColumn.SHAFT_MASS, UsualFigure.SHAFT_MASS),
            Map.entry(ClubColumn.GRIP_MASS, UsualFigure.GRIP_MASS),
            Map.entry(ClubColumn.LOFT_TARGET, UsualFigure.LOFT),
            Map.entry(ClubColumn.LIE_TARGET, UsualFigure.LIE),
            Map.entry(ClubColumn.GOLFER_LIE, UsualFigure.LIE));

    private static final Limit BALANCE_RATIO = new Limit(0.38, 0.62, "of the length");

    /** One warning for each figure, at its cell. */
    void check(Findings findings) {
        for (ClubColumn column : ClubColumn.values()) {
            if (FIGURES.containsKey(column) && isNumber(column)) {
                check(column, FIGURES.get(column).of(kind), findings);
            }
        }
        checkBalance(findings);
        sayFace(findings);
    }

    /** How a club with a sleeve looks at address rests on it. */
    private void sayFace(Findings findings) {
        if (row.isGiven(ClubColumn.SLEEVE) && !row.isGiven(ClubColumn.FACE)) {
            String name = row.text(ClubColumn.CLUB).orElseThrow();
            findings.add(Message.assumed(
                    row.cell(ClubColumn.FACE),
                    Wording.ofClub("Face is blank, so 0 degrees, square, is assumed: ", golfer, name, "", ".")));
        }
    }

    /** Two radii of a sole are a text that is no number. */
    private boolean isNumber(ClubColumn column) {
        return row.isGiven(column)
                && !(row.content(column) instanceof CellContent.Words words
                        && words.text().contains("/")
                        && column == ClubColumn.SOLE_RADIUS);
    }

    private void check(ClubColumn column, Limit usual, Findings findings) {
        double found = row.number(column).orElseThrow();
        if (!usual.holds(found)) {
            Unit unit = row.unit(column);
            warn(
                    column,
                    column.header() + " that a " + kind.label() + " hardly has (" + unit.inWords(usual) + "): ",
                    row.content(column).shown(),
                    new NumberTypos(usual, unit).maybe(found / unit.sizeMeasureUnits(), column.quantity()),
                    findings);
        }
    }

    private void checkBalance(Findings findings) {
        OptionalDouble lengthM = row.number(ClubColumn.LENGTH);
        OptionalDouble balanceM = row.number(ClubColumn.SHAFT_BALANCE);
        if (lengthM.isPresent()
                && balanceM.isPresent()
                && !BALANCE_RATIO.holds(balanceM.getAsDouble() / lengthM.getAsDouble())) {
            warn(
                    ClubColumn.SHAFT_BALANCE,
                    "Shaft balance that a shaft hardly has (0.38 to 0.62 of the length of the club): ",
                    row.content(ClubColumn.SHAFT_BALANCE).shown(),
                    "",
                    findings);
        }
    }

    private void warn(ClubColumn column, String lead, String found, String maybe, Findings findings) {
        String name = row.text(ClubColumn.CLUB).orElseThrow();
        String tail = "." + (maybe.isEmpty() ? " Maybe it is mistyped, or Kind is not what it is." : maybe);
        findings.add(Message.warning(row.cell(column), Wording.ofClub(lead, golfer, name, found, tail)));
    }
}
