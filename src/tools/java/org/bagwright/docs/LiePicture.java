package org.bagwright.docs;

import java.util.ArrayList;
import java.util.List;

/** Where the face of a club points whose lie is off, against its loft. */
final class LiePicture {
    /** Start direction from path to face: Wood, Henrikson and Broadie 2018, Proceedings 2(6), 249 [read]. */
    static final double LEAST_TO_FACE_RATIO = 0.61;

    static final double MOST_TO_FACE_RATIO = 0.83;

    /** Above this loft the range is not carried over: a blow on a face that steep starts the ball nearer the path. */
    static final int MOST_BALL_LOFT_DEG = 50;

    private LiePicture() {}

    static Svg draw() {
        Svg svg = new Svg(
                720,
                306,
                "A lie that is off points the face off",
                "Heading of the face against loft for a lie 1, 2 and 3 degrees off; it grows with loft. A band up to 50"
                        + " degrees of loft shows where the ball starts for 2 degrees.");
        Chart.Axis loft = new Chart.Axis("loft, degrees", 0, 60, 10, value -> Figures.fixed(value, 0));
        Chart.Axis heading = new Chart.Axis("heading of the face, degrees", 0, 6, 1, value -> Figures.fixed(value, 0));
        Chart chart = new Chart(svg, new Chart.Field(72, 44, 500, 208), loft, heading);
        band(svg, chart);
        Stroke[] strokes = {Stroke.THIRD, Stroke.FIRST, Stroke.SECOND};
        for (int errorDeg = 1; errorDeg <= 3; errorDeg++) {
            double offDeg = errorDeg;
            chart.graph(loftDeg -> heading(loftDeg, offDeg), strokes[errorDeg - 1]);
            Point end = chart.at(60, heading(60, offDeg));
            svg.text(end.moved(10, 4), "lie " + errorDeg + "° off", Lettering.LABEL.strong());
        }
        Point note = chart.at(60, 1.05).moved(10, 0);
        svg.text(note, "shaded: where", Lettering.NOTE);
        svg.text(note.moved(0, 15), "the ball starts,", Lettering.NOTE);
        svg.text(note.moved(0, 30), "lie 2° off", Lettering.NOTE);
        club(svg, chart, 10, "driver");
        club(svg, chart, 32, "middle iron");
        club(svg, chart, 56, "wedge");
        return svg;
    }

    private static void band(Svg svg, Chart chart) {
        List<Point> outline = new ArrayList<>();
        for (int loftDeg = 0; loftDeg <= MOST_BALL_LOFT_DEG; loftDeg++) {
            outline.add(chart.at(loftDeg, MOST_TO_FACE_RATIO * heading(loftDeg, 2)));
        }
        for (int loftDeg = MOST_BALL_LOFT_DEG; loftDeg >= 0; loftDeg--) {
            outline.add(chart.at(loftDeg, LEAST_TO_FACE_RATIO * heading(loftDeg, 2)));
        }
        svg.area(outline, Palette.SAND, Stroke.HELP);
    }

    private static void club(Svg svg, Chart chart, double loftDeg, String name) {
        Point foot = chart.at(loftDeg, 0);
        Point top = chart.at(loftDeg, 5.4);
        svg.line(foot, top, Stroke.HELP);
        svg.text(top.moved(0, -6), name, Lettering.LABEL.middle());
    }

    private static double heading(double loftDeg, double errorDeg) {
        return PageClubs.faceHeadingDeg(loftDeg, errorDeg);
    }
}
