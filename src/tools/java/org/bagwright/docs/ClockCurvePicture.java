package org.bagwright.docs;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.option.PoseNumbers;

/** Gauge loft against gauge lie round the clock, for one ring and for two. */
final class ClockCurvePicture {
    static final double RING_DEG = PageClubs.BEND_DEG / 2;

    private ClockCurvePicture() {}

    static Svg draw() {
        Svg svg = new Svg(
                720,
                334,
                "What a gauge reads round the clock",
                "Change of lie against change of loft for every hour of one ring, a closed curve wider than high; and the"
                        + " points that two rings of half the bend can reach.");
        one(svg, chart(svg, 84, "One ring of 1.70°, dashed: a circle of that size"));
        two(svg, chart(svg, 446, "Two rings of 0.85°, eight marks each"));
        return svg;
    }

    private static Chart chart(Svg svg, double leftPx, String heading) {
        svg.text(new Point(leftPx - 20, 52), heading, Lettering.NOTE);
        Chart.Field field = new Chart.Field(leftPx, 66, 228, 228);
        Chart.Axis loft = axis("loft change, degrees (weaker +)");
        Chart.Axis lie = axis("lie change, degrees (more upright +)");
        return new Chart(svg, field, loft, lie);
    }

    private static Chart.Axis axis(String label) {
        return new Chart.Axis(label, -3, 3, 1, value -> Figures.signed(value, 0));
    }

    private static void one(Svg svg, Chart chart) {
        List<Point> curve = new ArrayList<>();
        List<Point> circle = new ArrayList<>();
        for (int i = 0; i <= 120; i++) {
            double clockH = i / 10.0;
            double turnRad = Math.PI / 6 * clockH;
            curve.add(place(chart, PageClubs.driver(clockH)));
            circle.add(chart.at(PageClubs.BEND_DEG * Math.sin(turnRad), PageClubs.BEND_DEG * Math.cos(turnRad)));
        }
        svg.curve(circle, Stroke.HELP).curve(curve, Stroke.FIRST);
        Point middle = chart.at(0, 0);
        for (int hour = 1; hour <= 12; hour++) {
            Point dot = place(chart, PageClubs.driver(hour));
            svg.dot(dot, hour % 3 == 0 ? 4.5 : 3, Palette.AMBER, Stroke.NONE);
            double asideDeg = hour % 3 == 0 ? 38 : 0;
            Point label = dot.toward(middle.angleDegTo(dot) - asideDeg, 16).moved(0, 4);
            svg.text(label, Integer.toString(hour), Lettering.LABEL.strong().middle());
        }
    }

    private static void two(Svg svg, Chart chart) {
        List<Point> border = new ArrayList<>();
        for (int i = 0; i <= 120; i++) {
            border.add(place(chart, PageClubs.driver(i / 10.0)));
        }
        svg.area(border, Palette.SAND, Stroke.HELP);
        for (int first = 0; first < 8; first++) {
            for (int second = 0; second <= first; second++) {
                svg.dot(place(chart, rings(1.5 * first, 1.5 * second)), 3, Palette.SLATE, Stroke.NONE);
            }
        }
    }

    /** The driver behind two rings of half the bend. */
    static PoseNumbers rings(double oneH, double otherH) {
        return PageClubs.driver(PageClubs.LIE_DEG, new Ring(oneH, RING_DEG), new Ring(otherH, RING_DEG));
    }

    private static Point place(Chart chart, PoseNumbers pose) {
        return chart.at(pose.gaugeLoftDeg() - PageClubs.LOFT_DEG, pose.gaugeLieDeg() - PageClubs.LIE_DEG);
    }
}
