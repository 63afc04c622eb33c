package org.bagwright.workbook;

import java.util.Arrays;
import java.util.List;
import org.bagwright.domain.Limit;
import org.bagwright.domain.Measure;

/** The sheet Aims. */
final class AimColumns {
    static final Column MEASURE = Column.of(
                    Column.Kind.CHOICE, "Measure", "What is measured: " + String.join(", ", labels()) + ".")
            .offering(labels().toArray(String[]::new))
            .mustBeFilled();
    static final Column TOLERANCE = Column.number(
                    "Tolerance",
                    Quantity.PLAIN,
                    new Limit(0, 1000, ""),
                    "How far off still counts as small: degrees for loft, lie and sits, the distance unit of Start for"
                            + " carry and gap, points for swingweight and spread, items for change. Spread is kg cm2"
                            + " where Match by on the sheet Start is inertia.")
            .ifBlank("the usual value; for spread 1 point, or 25 kg cm2, which is a little more than one"
                    + " swingweight point at the head of an iron");
    static final Column IMPORTANCE = Column.number(
                    "Importance",
                    Quantity.POINTS,
                    new Limit(0, 1000, "points"),
                    "What one tolerance off costs, in points. 0 leaves the measure out.")
            .ifBlank("the usual value");
    static final Column MUST =
            Column.yesNo("Must", "yes: a plan must stay inside the tolerance.").ifBlank("no");

    static final SheetSchema SHEET = new SheetSchema(
            "Aims",
            "One row per measure: how much it counts. Being off by twice the tolerance costs four times as much.",
            List.of(MEASURE, TOLERANCE, IMPORTANCE, MUST),
            List.of(MEASURE));

    private AimColumns() {}

    static List<String> labels() {
        return Arrays.stream(Measure.values()).map(Measure::label).toList();
    }
}
