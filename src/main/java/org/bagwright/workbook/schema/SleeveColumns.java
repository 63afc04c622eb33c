package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** The sheet Sleeves. */
public final class SleeveColumns {
    private static final Limit RATED_DEG = new Limit(-8, 8, "degrees");
    private static final String HOURS = " as an hour of the clock on the sheet Start: 1.5 or 1:30.";

    public static final Column SLEEVE = Column.of(Column.Kind.TEXT, "Sleeve", "Your name for the sleeve, on each of its rows.")
            .mustBeFilled();
    public static final Column SETTING = Column.of(
                    Column.Kind.MARK, "Setting", "The mark on the sleeve. One row for every mark.")
            .mustBeFilled();
    public static final Column CLOCK = clock("Clock", "Which way the shaft leans off the bore at this setting," + HOURS)
            .ifBlank("only when Bend is 0 or a rated change is given");
    public static final Column BEND = angle("Bend", Limit.BEND_DEG, "The angle between shaft and bore, degrees.")
            .ifBlank("only when a rated change is given");
    public static final Column CLOCK_2 = clock(
                    "Clock 2", "Sleeves with two rings: the hour of the second ring," + HOURS)
            .ifBlank("one ring");
    public static final Column BEND_2 = angle(
                    "Bend 2", Limit.BEND_DEG, "Sleeves with two rings: the angle of the second ring, degrees.")
            .ifBlank("one ring");
    public static final Column TURNS_SHAFT = Column.yesNo(
                    "Turns shaft", "yes: the sleeve is glued to the shaft, so another setting turns the shaft.")
            .ifBlank("yes");
    public static final Column LOFT_CHANGE = angle(
                    "Loft change",
                    RATED_DEG,
                    "Change of loft in the sleeve's own table, degrees. Needs Lie change too.")
            .ifBlank("no table; then Clock and Bend are needed");
    public static final Column LIE_CHANGE = angle(
                    "Lie change", RATED_DEG, "Change of lie in the sleeve's own table, degrees. Needs Loft change too.")
            .ifBlank("no table; then Clock and Bend are needed");
    public static final Column FACE_CHANGE = angle(
                    "Face change",
                    RATED_DEG,
                    "Change of the face as it sits, in the sleeve's own table, degrees, closed is positive.")
            .ifBlank("worked out from how the head comes to rest");

    public static final SheetSchema SHEET = new SheetSchema(
            "Sleeves",
            "One row for every setting of every sleeve: Sleeve, Setting, Clock and Bend, or the sleeve's own table of"
                    + " changes.",
            List.of(SLEEVE, SETTING, CLOCK, BEND, CLOCK_2, BEND_2, TURNS_SHAFT, LOFT_CHANGE, LIE_CHANGE, FACE_CHANGE),
            List.of(SLEEVE));

    private SleeveColumns() {}

    private static Column clock(String header, String help) {
        return Column.number(header, Quantity.HOURS, Limit.CLOCK_H, help).as(Column.Kind.CLOCK);
    }

    private static Column angle(String header, Limit limit, String help) {
        return Column.number(header, Quantity.ANGLE, limit, help);
    }
}
