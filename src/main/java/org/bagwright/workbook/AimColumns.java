package org.bagwright.workbook;

import java.util.List;
import org.bagwright.domain.Limit;
import org.bagwright.domain.Measure;

/** The sheet Aims. */
final class AimColumns {
    /** The measures that a plan of this version can use. */
    static final List<Measure> USED =
            List.of(Measure.LOFT, Measure.LIE, Measure.SITS, Measure.CARRY, Measure.GAP, Measure.CHANGE);

    static final Column MEASURE = Column.of(
                    Column.Kind.CHOICE, "Measure", "What is measured: " + String.join(", ", usedLabels()) + ".")
            .offering(usedLabels().toArray(String[]::new))
            .mustBeFilled();
    static final Column TOLERANCE = Column.number(
                    "Tolerance",
                    Quantity.PLAIN,
                    new Limit(0, 1000, ""),
                    "How far off still counts as small: degrees for loft, lie and sits, the distance unit of Start for"
                            + " carry and gap, items for change.")
            .ifBlank("the tool's own figure");
    static final Column IMPORTANCE = Column.number(
                    "Importance",
                    Quantity.POINTS,
                    new Limit(0, 1000, "points"),
                    "What one tolerance off costs, in points. 0 leaves the measure out.")
            .ifBlank("the tool's own figure");
    static final Column MUST =
            Column.yesNo("Must", "yes: a plan must stay inside the tolerance.").ifBlank("no");

    static final SheetSchema SHEET = new SheetSchema(
            "Aims",
            "One row a measure: how much it counts. Twice the tolerance off costs four times as much.",
            List.of(MEASURE, TOLERANCE, IMPORTANCE, MUST),
            List.of(MEASURE));

    private AimColumns() {}

    static List<String> usedLabels() {
        return USED.stream().map(Measure::label).toList();
    }
}
