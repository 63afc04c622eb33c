package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** The columns of the sheet Sleeves. */
public enum SleeveColumn implements SheetColumn {
    SLEEVE(ColumnSpec.of(Kind.TEXT, "Sleeve", "Your name for the sleeve, on each of its rows.")
            .mustBeFilled()
            .alsoCalled("Hosel sleeve", "Shaft sleeve")),
    SETTING(ColumnSpec.of(Kind.MARK, "Setting", "The mark on the sleeve. One row for every mark.")
            .mustBeFilled()
            .alsoCalled("Mark", "Setting mark", "Position")),
    CLOCK(clock("Clock", "Which way the shaft leans off the bore at this setting,")
            .ifBlank("only when Bend is 0 or a rated change is given")
            .alsoCalled("Clock hour", "Hour", "Clock position")),
    BEND(ColumnSpec.angle("Bend", Limit.BEND_DEG, "The angle between shaft and bore, degrees.")
            .ifBlank("only when a rated change is given")
            .alsoCalled("Tilt")),
    CLOCK_2(clock("Clock 2", "Sleeves with two rings: the hour of the second ring,")
            .ifBlank("one ring")
            .alsoCalled("Second clock", "Clock hour 2", "Hour 2")),
    BEND_2(ColumnSpec.angle("Bend 2", Limit.BEND_DEG, "Sleeves with two rings: the angle of the second ring, degrees.")
            .ifBlank("one ring")
            .alsoCalled("Second bend", "Tilt 2")),
    TURNS_SHAFT(ColumnSpec.yesNo(
                    "Turns shaft", "yes: the sleeve is glued to the shaft, so another setting turns the shaft.")
            .ifBlank("yes")
            .alsoCalled("Rotates shaft")),
    LOFT_CHANGE(ColumnSpec.angle(
                    "Loft change",
                    new Limit(-8, 8, "degrees"),
                    "Change of loft in the sleeve's own table, degrees. Needs Lie change too.")
            .ifBlank("no table; then Clock and Bend are needed")),
    LIE_CHANGE(ColumnSpec.angle(
                    "Lie change",
                    new Limit(-8, 8, "degrees"),
                    "Change of lie in the sleeve's own table, degrees. Needs Loft change too.")
            .ifBlank("no table; then Clock and Bend are needed")),
    FACE_CHANGE(ColumnSpec.angle(
                    "Face change",
                    new Limit(-8, 8, "degrees"),
                    "Change of the face as it sits, in the sleeve's own table, degrees, closed is positive.")
            .ifBlank("worked out from how the head comes to rest"));

    public static final SheetSchema SHEET = new SheetSchema(
            "Sleeves",
            "One row for every setting of every sleeve: Sleeve, Setting, Clock and Bend, or the sleeve's own table of"
                    + " changes.",
            List.of(values()),
            List.of(SLEEVE));

    @SuppressWarnings("ImmutableEnumChecker") // its lists are copies that cannot change
    private final ColumnSpec spec;

    SleeveColumn(ColumnSpec spec) {
        this.spec = spec;
    }

    @Override
    public ColumnSpec spec() {
        return spec;
    }

    private static ColumnSpec clock(String header, String help) {
        String hours = " as an hour of the clock on the sheet Start: 1.5 or 1:30.";
        return ColumnSpec.number(header, Quantity.HOURS, Limit.CLOCK_H, help + hours)
                .as(Kind.CLOCK);
    }
}
