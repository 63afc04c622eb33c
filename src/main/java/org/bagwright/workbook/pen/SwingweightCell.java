package org.bagwright.workbook.pen;

import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.Swingweight;

/**
 * A swingweight in a cell, in full: {@code D2}, or where the letters end the points from A0 as a number.
 *
 * @param scalePoints points from A0
 */
public record SwingweightCell(double scalePoints) {
    private static final double POINTS_PER_LETTER = 10;
    private static final double LETTERS_END_POINTS = 70;
    private static final double OZ_IN_PER_POINT = 1.75;
    private static final double G_PER_OZ = 28.349523125;
    private static final double FULCRUM_IN = 14;
    private static final double MM_PER_IN = 25.4;
    private static final double M_PER_IN = 0.0254;

    public void write(SheetPen pen, int row, int column, BookStyles.Role role) {
        if (hasLetter()) {
            pen.text(row, column, role, text());
        } else {
            pen.number(row, column, role, "0.0##", scalePoints);
        }
    }

    public boolean hasLetter() {
        return scalePoints >= 0 && scalePoints < LETTERS_END_POINTS;
    }

    /** The letter and the points, not rounded to a tenth as in the text for reading. */
    public String text() {
        int letter = (int) Math.floor(scalePoints / POINTS_PER_LETTER);
        return (char) ('A' + letter) + Numbers.trimmed(scalePoints - letter * POINTS_PER_LETTER, 9);
    }

    /** The formula that reads such a cell, in any locale, as points from A0; a blank stays blank. */
    public static String points(String cell) {
        String written = "SUBSTITUTE(" + cell + ",\" \",\"\")";
        String decimals = "MID(" + written + ",4,9)";
        return "IF(" + cell + "=\"\",\"\",IF(ISNUMBER(" + cell + ")," + cell + ",IFERROR((CODE(UPPER(" + written
                + "))-65)*10+VALUE(MID(" + written + ",2,1))+IF(LEN(" + written + ")>3,VALUE(" + decimals + ")/10^LEN("
                + decimals + "),0),\"?\")))";
    }

    /** The formula for the grams that bring a club to its target when added at the head; blank without a target. */
    public static String gramsAtHead(String targetPoints, String points, String length, LengthUnit unit) {
        String perPoint = unit == LengthUnit.INCH
                ? OZ_IN_PER_POINT * G_PER_OZ + "/(" + length + "-" + FULCRUM_IN + ")"
                : OZ_IN_PER_POINT * G_PER_OZ * MM_PER_IN + "/(" + length + "-" + FULCRUM_IN * MM_PER_IN + ")";
        return "IF(OR(" + targetPoints + "=\"\"," + points + "=\"\"),\"\",IFERROR((" + targetPoints + "-" + points
                + ")*" + perPoint + ",\"?\"))";
    }

    /** What the formula of {@link #gramsAtHead} gives where this is the target, grams. */
    public double gramsAtHead(Swingweight now, double lengthM) {
        double pointsOff = scalePoints - now.scalePoints();
        return pointsOff * OZ_IN_PER_POINT * G_PER_OZ / (lengthM / M_PER_IN - FULCRUM_IN);
    }
}
