package org.bagwright.docs;

/** Round the clock: how the head sits when it is let, the loft it then has, and the loft a gauge reads. */
final class SitsPicture {
    private SitsPicture() {}

    static Svg draw() {
        Svg svg = new Svg(
                720,
                290,
                "Let it sit: the face turns, the loft stays",
                "Against the hour: the heading as it sits, closed up to 3.2 degrees at hour 3 and open as much at hour 9;"
                        + " the loft as it sits, nearly unchanged; the loft on a gauge, up and down by 2.0 degrees.");
        Chart.Axis hours = new Chart.Axis("hour of the setting", 0, 12, 1, SitsPicture::hour);
        Chart.Axis change =
                new Chart.Axis("degrees from the head as designed", -4, 4, 1, value -> Figures.signed(value, 0));
        Chart chart = new Chart(svg, new Chart.Field(72, 44, 620, 196), hours, change);
        chart.graph(hour -> PageClubs.driver(hour).gaugeLoftDeg() - PageClubs.LOFT_DEG, Stroke.SECOND);
        chart.graph(hour -> PageClubs.driver(hour).resting().loftDeg() - PageClubs.LOFT_DEG, Stroke.THIRD);
        chart.graph(hour -> PageClubs.driver(hour).sitsClosedDeg(), Stroke.FIRST);
        label(svg, chart.at(4.2, 2.95), "heading as it sits (closed +)", Palette.SLATE);
        label(svg, chart.at(6.2, 1.2), "loft change on a gauge, edge square (weaker +)", "#8A5A12");
        svg.line(chart.at(5.05, 1.15), chart.at(6.1, 1.25), Stroke.AXIS);
        label(svg, chart.at(0.6, -0.6), "loft change as it sits", Palette.INK);
        return svg;
    }

    private static void label(Svg svg, Point at, String words, String colour) {
        svg.text(at, words, new Lettering(12, true, "start", colour));
    }

    private static String hour(double hour) {
        return hour < 0.5 ? "12" : Figures.fixed(hour, 0);
    }
}
