package org.bagwright.docs;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/** A field with axes in a picture, which puts numbers in their place. */
final class Chart {
    private static final int CURVE_STEPS = 120;

    /** Where the field stands in the picture, px. */
    record Field(double leftPx, double topPx, double widthPx, double heightPx) {}

    /**
     * One axis.
     *
     * @param label what it shows, with its unit
     * @param tick how a value is written
     */
    record Axis(
            String label,
            double fromMeasureUnits,
            double toMeasureUnits,
            double stepMeasureUnits,
            DoubleFunction<String> tick) {
        double part(double value) {
            return (value - fromMeasureUnits) / (toMeasureUnits - fromMeasureUnits);
        }

        List<Double> ticks() {
            List<Double> values = new ArrayList<>();
            long count = Math.round((toMeasureUnits - fromMeasureUnits) / stepMeasureUnits);
            for (long i = 0; i <= count; i++) {
                values.add(fromMeasureUnits + i * stepMeasureUnits);
            }
            return values;
        }
    }

    private final Svg svg;
    private final Field field;
    private final Axis across;
    private final Axis up;

    Chart(Svg svg, Field field, Axis across, Axis up) {
        this.svg = svg;
        this.field = field;
        this.across = across;
        this.up = up;
        drawAcross();
        drawUp();
    }

    Point at(double acrossMeasureUnits, double upMeasureUnits) {
        return new Point(
                field.leftPx + field.widthPx * across.part(acrossMeasureUnits),
                field.topPx + field.heightPx * (1 - up.part(upMeasureUnits)));
    }

    /** Draws a value over the whole of the axis across. */
    Chart graph(DoubleUnaryOperator value, Stroke stroke) {
        svg.curve(points(value), stroke);
        return this;
    }

    List<Point> points(DoubleUnaryOperator value) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= CURVE_STEPS; i++) {
            double x = across.fromMeasureUnits + (across.toMeasureUnits - across.fromMeasureUnits) * i / CURVE_STEPS;
            points.add(at(x, value.applyAsDouble(x)));
        }
        return points;
    }

    private void drawAcross() {
        double bottomPx = field.topPx + field.heightPx;
        for (double tick : across.ticks()) {
            Point foot = at(tick, up.fromMeasureUnits);
            svg.line(foot, foot.moved(0, -field.heightPx), line(tick));
            svg.text(foot.moved(0, 17), across.tick.apply(tick), Lettering.LABEL.middle());
        }
        Point middle = new Point(field.leftPx + field.widthPx / 2, bottomPx + 37);
        svg.text(middle, across.label, Lettering.LABEL.middle());
    }

    private void drawUp() {
        for (double tick : up.ticks()) {
            Point foot = at(across.fromMeasureUnits, tick);
            svg.line(foot, foot.moved(field.widthPx, 0), line(tick));
            svg.text(foot.moved(-8, 4), up.tick.apply(tick), Lettering.LABEL.end());
        }
        Point middle = new Point(field.leftPx - 42, field.topPx + field.heightPx / 2);
        svg.upwardText(middle, up.label, Lettering.LABEL.middle());
    }

    private static Stroke line(double tick) {
        return Math.abs(tick) < 1e-9 ? Stroke.AXIS : Stroke.GRID;
    }
}
