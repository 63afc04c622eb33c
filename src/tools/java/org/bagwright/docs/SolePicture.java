package org.bagwright.docs;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.geometry.SoleForm;

/** The sole from the side: where it touches and where the weight hangs, as designed and lofted up. True to scale. */
final class SolePicture {
    private static final double PX_PER_MM = 2;
    private static final double GROUND_PX = 188;
    private static final SoleForm FORM = SoleForm.assumedFor(ClubKind.DRIVER);

    private SolePicture() {}

    static Svg draw() {
        Svg svg = new Svg(
                720,
                272,
                "Where the sole touches, seen from the toe",
                "Left: the head as designed, its balance point straight over the contact point. Right: at hour 3 with the"
                        + " edge held square, the contact point has moved back and the balance point is ahead of it.");
        PoseNumbers pose = PageClubs.driver(3);
        double loftedDeg = pose.address().loftDeg() - PageClubs.LOFT_DEG;
        svg.text(new Point(20, 50), "As designed", Lettering.HEADING);
        side(svg, new Point(195, GROUND_PX), 0, 0);
        svg.text(new Point(195, GROUND_PX + 36), "balance point over contact point", Lettering.LABEL.middle());
        svg.text(new Point(195, GROUND_PX + 53), "it rests as it is", Lettering.NOTE.middle());
        String heading = "Hour 3, edge held square: " + Figures.fixed(loftedDeg, 2) + "° weaker";
        svg.text(new Point(380, 50), heading, Lettering.HEADING);
        side(svg, new Point(555, GROUND_PX), loftedDeg, pose.address().contactShiftMm());
        lofted(svg, pose);
        svg.arrow(new Point(655, 216), new Point(695, 216), Stroke.THIN);
        svg.text(new Point(675, 234), "target", Lettering.LABEL.middle());
        return svg;
    }

    private static void side(Svg svg, Point origin, double loftedDeg, double contactMm) {
        Tilted head = new Tilted(origin, loftedDeg, contactMm);
        svg.line(origin.moved(-165, 0), origin.moved(160, 0), Stroke.AXIS);
        svg.area(head.of(outline()), Palette.MIST, Stroke.OUTLINE);
        Point contact = head.of(contactMm, soleMm(contactMm));
        Point balance = head.of(0, FORM.centreOfGravityHeightMm());
        svg.line(balance, new Point(balance.xPx(), origin.yPx() + 8), Stroke.HELP);
        svg.dot(balance, 6, Palette.PAPER, Stroke.OUTLINE).dot(balance, 2.5, Palette.SLATE, Stroke.NONE);
        Point foot = new Point(contact.xPx(), origin.yPx());
        svg.area(List.of(foot, foot.moved(-7, 12), foot.moved(7, 12)), Palette.AMBER, Stroke.NONE);
        svg.text(balance.moved(-12, 4), "balance point", Lettering.LABEL.end());
    }

    private static void lofted(Svg svg, PoseNumbers pose) {
        String back = "contact point " + Figures.fixed(-pose.address().contactShiftMm(), 1) + " mm further back,";
        String ahead = "balance point " + Figures.fixed(aheadMm(), 1) + " mm ahead of that";
        svg.text(new Point(550, GROUND_PX + 36), back, Lettering.LABEL.middle());
        svg.text(new Point(550, GROUND_PX + 53), ahead, Lettering.LABEL.middle());
        svg.text(new Point(550, GROUND_PX + 70), "it wants to tip forward", Lettering.NOTE.middle());
    }

    /** How far the balance point is ahead of the contact point at hour 3 with a square edge, mm. */
    static double aheadMm() {
        double shiftMm = -PageClubs.driver(3).address().contactShiftMm();
        return shiftMm * (FORM.foreAftRadiusMm() - FORM.centreOfGravityHeightMm()) / FORM.foreAftRadiusMm();
    }

    /** Height of the sole over its lowest point, mm, this far forward of it. */
    private static double soleMm(double forwardMm) {
        double radiusMm = FORM.foreAftRadiusMm();
        return radiusMm - Math.sqrt(radiusMm * radiusMm - forwardMm * forwardMm);
    }

    /** A driver's outline: sole, face at its loft, crown. Forward and up, mm. */
    private static List<double[]> outline() {
        List<double[]> points = new ArrayList<>();
        for (int forwardMm = -56; forwardMm <= 36; forwardMm += 4) {
            points.add(new double[] {forwardMm, soleMm(forwardMm)});
        }
        double backMm = 52 * Math.tan(Math.toRadians(PageClubs.LOFT_DEG));
        double[] top = {36 - backMm, soleMm(36) + 52};
        points.add(top);
        double[][] crown = {top, {0, 74}, {-62, 50}, {-68, 24}};
        double[][] skirt = {{-68, 24}, {-69, 16}, {-64, 11}, {-56, soleMm(-56)}};
        bend(points, crown);
        bend(points, skirt);
        return points;
    }

    private static void bend(List<double[]> points, double[][] corners) {
        for (int i = 1; i <= 20; i++) {
            double part = i / 20.0;
            double rest = 1 - part;
            double[] weights = {rest * rest * rest, 3 * rest * rest * part, 3 * rest * part * part, part * part * part};
            double[] point = new double[2];
            for (int corner = 0; corner < 4; corner++) {
                point[0] += weights[corner] * corners[corner][0];
                point[1] += weights[corner] * corners[corner][1];
            }
            points.add(point);
        }
    }

    /** A head turned weaker that touches the ground where it must. */
    private record Tilted(Point origin, double loftedDeg, double contactMm) {
        Point of(double forwardMm, double upMm) {
            double sunkMm = turnedUpMm(contactMm, soleMm(contactMm));
            double turnRad = Math.toRadians(loftedDeg);
            double acrossMm = forwardMm * Math.cos(turnRad) - upMm * Math.sin(turnRad);
            return origin.moved(PX_PER_MM * acrossMm, -PX_PER_MM * (turnedUpMm(forwardMm, upMm) - sunkMm));
        }

        List<Point> of(List<double[]> outline) {
            return outline.stream().map(point -> of(point[0], point[1])).toList();
        }

        private double turnedUpMm(double forwardMm, double upMm) {
            double turnRad = Math.toRadians(loftedDeg);
            return forwardMm * Math.sin(turnRad) + upMm * Math.cos(turnRad);
        }
    }
}
