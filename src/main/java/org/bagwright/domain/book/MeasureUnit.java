package org.bagwright.domain.book;

/** The unit of a measure: of its deviations and its tolerance. */
public enum MeasureUnit {
    DEGREE("deg"),
    /** Metres inside the program, the book's unit of distance for people. */
    DISTANCE("m"),
    /** Points of the swingweight scale. */
    POINT("points"),
    /** The unit in which the clubs of a book are matched. */
    MATCH("points"),
    /** Something that is changed on a club. */
    ITEM("item");

    private final String label;

    MeasureUnit(String label) {
        this.label = label;
    }

    /** The unit as a book shows it. */
    public String label(BookSettings settings) {
        return switch (this) {
            case DISTANCE -> settings.units().distance().label();
            case MATCH -> settings.matching().by().unitLabel();
            default -> label;
        };
    }

    /** A number in this unit as a book shows it. */
    public double shown(double valueMeasureUnits, BookSettings settings) {
        return this == DISTANCE ? settings.units().distance().fromM(valueMeasureUnits) : valueMeasureUnits;
    }
}
