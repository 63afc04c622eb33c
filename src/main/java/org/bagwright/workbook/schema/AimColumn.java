package org.bagwright.workbook.schema;

import java.util.Arrays;
import java.util.List;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.MeasureUnit;
import org.bagwright.domain.text.ListText;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** The columns of the sheet Aims. */
public enum AimColumn implements SheetColumn {
    MEASURE(ColumnSpec.of(Kind.CHOICE, "Measure", "What is measured: " + String.join(", ", labels()) + ".")
            .offering(labels().toArray(String[]::new))
            .mustBeFilled()
            .alsoCalled("Aim", "Criterion")),
    TOLERANCE(ColumnSpec.number(
                    "Tolerance",
                    Quantity.PLAIN,
                    new Limit(0, 1000, ""),
                    "How far off still counts as small: "
                            + String.join(
                                    ", ",
                                    "degrees for " + with(MeasureUnit.DEGREE),
                                    "the distance unit of Start for " + with(MeasureUnit.DISTANCE),
                                    "points for " + with(MeasureUnit.POINT, MeasureUnit.MATCH),
                                    "items for " + with(MeasureUnit.ITEM))
                            + ". Spread is kg cm2 where Match by on the sheet Start is inertia.")
            .ifBlank("the usual value; for spread 1 point, or 25 kg cm2, which is a little more than one"
                    + " swingweight point at the head of an iron")
            .alsoCalled("Tol")),
    IMPORTANCE(ColumnSpec.number(
                    "Importance",
                    Quantity.POINTS,
                    new Limit(0, 1000, "points"),
                    "What one tolerance off costs, in points. 0 leaves the measure out.")
            .ifBlank("the usual value")
            .alsoCalled("Weight", "Priority")),
    MUST(ColumnSpec.yesNo("Must", "yes: a plan must stay inside the tolerance.")
            .ifBlank("no")
            .alsoCalled("Must have", "Required"));

    public static final SheetSchema SHEET = new SheetSchema(
            "Aims",
            "One row per measure: how much it counts. Being off by twice the tolerance costs four times as much.",
            List.of(values()),
            List.of(MEASURE));

    @SuppressWarnings("ImmutableEnumChecker") // its lists are copies that cannot change
    private final ColumnSpec spec;

    AimColumn(ColumnSpec spec) {
        this.spec = spec;
    }

    @Override
    public ColumnSpec spec() {
        return spec;
    }

    public static List<String> labels() {
        return Arrays.stream(Measure.values()).map(Measure::label).toList();
    }

    /** The measures in some units, such as {@code loft, lie and sits}. */
    private static String with(MeasureUnit... units) {
        return ListText.allOf(Arrays.stream(Measure.values())
                .filter(measure -> List.of(units).contains(measure.unit()))
                .map(Measure::label)
                .toList());
    }
}
