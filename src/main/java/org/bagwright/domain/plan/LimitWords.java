package org.bagwright.domain.plan;

import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.StatedLimit;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;

/**
 * A limit in words.
 *
 * @param limit the limit
 * @param distance the unit in which the book shows distances
 */
record LimitWords(StatedLimit limit, LengthUnit distance) {
    private static final int MOST_DECIMALS = 4;

    /** A value as the book shows it. */
    double shown(double valueMeasureUnits) {
        return isDistance() ? distance.fromM(valueMeasureUnits) : valueMeasureUnits;
    }

    private boolean isDistance() {
        return limit.kind().quantity() == LimitKind.Quantity.CARRY
                || limit.kind().quantity() == LimitKind.Quantity.GAP;
    }

    /** Such as {@code 4 hybrid sits 1.6 closed, at most 0 accepted}. */
    String broken(String club, double valueMeasureUnits) {
        double figure = shown(valueMeasureUnits);
        double bound = shown(limit.valueMeasureUnits());
        return switch (limit.kind().quantity()) {
            case SITS -> club + " sits " + look(figure, bound) + ", " + acceptedLook(bound) + " accepted";
            case CARRY -> club + " carries " + apart(figure, bound) + unit() + accepted(bound);
            case GAP -> club + ": gap " + apart(figure, bound) + unit() + accepted(bound);
            case LANDING -> club + " comes down at " + apart(figure, bound) + " deg" + accepted(bound);
        };
    }

    private String unit() {
        return " " + distance.label();
    }

    private String accepted(double bound) {
        return ", at " + (limit.kind().isLeast() ? "least " : "most ") + Numbers.trimmed(bound, 2) + " accepted";
    }

    private static String look(double closedDeg, double boundDeg) {
        String size = apart(Math.abs(closedDeg), Math.abs(boundDeg));
        return size + (closedDeg < 0 ? " open" : " closed");
    }

    /** On its own side a bound is a most; on the other side it asks for so much at least. */
    private String acceptedLook(double boundDeg) {
        boolean open = limit.kind() == LimitKind.MOST_OPEN;
        boolean ownSide = open ? boundDeg <= 0 : boundDeg >= 0;
        String size = Numbers.trimmed(Math.abs(boundDeg), 2);
        String side = boundDeg == 0 ? "" : boundDeg < 0 ? " open" : " closed";
        return "at " + (ownSide ? "most " : "least ") + size + side;
    }

    /** A figure with one decimal, or as many as it takes to look different from its bound. */
    static String apart(double figure, double bound) {
        for (int decimals = 1; decimals < MOST_DECIMALS; decimals++) {
            if (!Numbers.fixed(figure, decimals).equals(Numbers.fixed(bound, decimals))) {
                return Numbers.fixed(figure, decimals);
            }
        }
        return Numbers.fixed(figure, MOST_DECIMALS);
    }
}
