package org.bagwright.docs;

import java.util.ArrayList;
import java.util.List;

/** The bore, the cone that the shaft draws round it, and the clock across it. */
final class ConePicture {
    private static final double DRAWN_BEND_DEG = 14;
    private static final double CONE_MM = 172;
    private static final double SHAFT_H = 1.5;
    private static final Camera CAMERA = new Camera(new Point(158, 280), 36, 22);
    private static final Mm BORE = Mm.direction(0, 0);
    private static final Mm APEX = new Mm(-8, 40, 34).plus(BORE.times(42));

    private ConePicture() {}

    static Svg draw() {
        Svg svg = new Svg(
                720,
                336,
                "The bore, the cone and the clock",
                "Left: a driver head with its bore; the shaft leans off the bore and draws a cone, hours marked on its rim."
                        + " Right: the clock as seen from the grip end, for a right-handed and a left-handed club.");
        svg.text(new Point(20, 52), "Seen from the front. The bend is drawn much too wide.", Lettering.NOTE);
        head(svg);
        cone(svg);
        rim(svg);
        svg.text(new Point(424, 52), "The same clock seen from the grip end", Lettering.NOTE);
        clock(svg, new Point(496, 164), "right-handed", -1);
        clock(svg, new Point(644, 164), "left-handed", 1);
        return svg;
    }

    private static void head(Svg svg) {
        List<Mm> body = new ArrayList<>();
        List<Mm> face = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double turnRad = Math.PI * i / 30;
            double across = rounded(Math.cos(turnRad));
            double along = rounded(Math.sin(turnRad));
            body.add(new Mm(-48 + 48 * along, -15 + 60 * across, 28));
            face.add(new Mm(0, -15 + 58 * across, 28 + 26 * along));
        }
        Mm foot = APEX.plus(BORE.times(-42));
        svg.area(CAMERA.of(body), Palette.MIST, Stroke.OUTLINE);
        svg.line(CAMERA.of(foot), CAMERA.of(APEX), Stroke.OUTLINE.wide(13));
        svg.area(CAMERA.of(face), Palette.PAPER, Stroke.OUTLINE);
        for (int row = 0; row < 4; row++) {
            Mm heel = new Mm(0, 8, 16 + 8 * row);
            svg.line(CAMERA.of(heel), CAMERA.of(new Mm(0, -40, 16 + 8 * row)), Stroke.GRID.wide(1.5));
        }
        Point start = CAMERA.of(new Mm(14, -15, 4));
        Point end = CAMERA.of(new Mm(90, -15, 4));
        svg.arrow(start, end, Stroke.THIN);
        svg.text(end.moved(4, 17), "target", Lettering.LABEL.middle());
        svg.text(CAMERA.of(new Mm(0, -60, 28)).moved(-10, -14), "toe", Lettering.LABEL.end());
        svg.text(CAMERA.of(new Mm(0, 44, 18)).moved(12, 8), "heel", Lettering.LABEL);
    }

    private static void cone(Svg svg) {
        Point apex = CAMERA.of(APEX);
        Point middle = CAMERA.of(APEX.plus(BORE.times(CONE_MM)));
        double axisDeg = apex.angleDegTo(middle);
        Point left = middle;
        Point right = middle;
        for (int i = 0; i < 360; i++) {
            Point point = rimPoint(i / 30.0);
            left = apex.angleDegTo(point) > apex.angleDegTo(left) ? point : left;
            right = apex.angleDegTo(point) < apex.angleDegTo(right) ? point : right;
        }
        svg.area(List.of(apex, left, middle, right), Palette.SAND, Stroke.NONE);
        svg.area(rimPoints(), Palette.SAND, Stroke.OUTLINE);
        svg.line(apex, left, Stroke.OUTLINE).line(apex, right, Stroke.OUTLINE);
        svg.line(apex, apex.toward(axisDeg, 194), Stroke.FIRST.wide(1.5).unbroken());
        svg.text(apex.toward(axisDeg, 194).moved(6, 2), "bore", Lettering.LABEL);
        svg.line(apex, rimPoint(SHAFT_H), new Stroke(Palette.AMBER, 5, ""));
    }

    private static void rim(Svg svg) {
        String[] words = {"12 more upright", "3 toward the target", "6 flatter", "9 away from the target"};
        Point middle = CAMERA.of(APEX.plus(BORE.times(CONE_MM)));
        for (int hour = 0; hour < 12; hour++) {
            Point place = rimPoint(hour);
            boolean quarter = hour % 3 == 0;
            svg.dot(place, quarter ? 3.5 : 2, Palette.SLATE, Stroke.NONE);
            if (quarter) {
                boolean leftward = place.xPx() < middle.xPx();
                double asidePx = hour == 3 ? -28 : leftward ? -9 : 9;
                Lettering lettering = leftward ? Lettering.LABEL.end() : Lettering.LABEL;
                svg.line(place, place.moved(asidePx, 0), Stroke.THIN);
                svg.text(place.moved(asidePx + (leftward ? -3 : 3), 4), words[hour / 3], lettering);
            }
        }
        Point shaft = rimPoint(SHAFT_H);
        svg.text(
                shaft.moved(-12, 4),
                "shaft, here at 1:30",
                Lettering.LABEL.strong().end());
    }

    private static void clock(Svg svg, Point middle, String hand, int side) {
        svg.dot(middle, 60, Palette.SAND, Stroke.OUTLINE);
        for (int hour = 1; hour <= 12; hour++) {
            double angleDeg = side > 0 ? 90 - 30 * hour : 90 + 30 * hour;
            Point number = middle.toward(angleDeg, 47).moved(0, 4);
            boolean quarter = hour % 3 == 0;
            Lettering lettering = quarter ? Lettering.LABEL.strong() : Lettering.NOTE;
            svg.text(number, Integer.toString(hour), lettering.middle());
        }
        svg.dot(middle, 4, Palette.SLATE, Stroke.NONE);
        Point shaft = middle.toward(90 - side * 30 * SHAFT_H, 30);
        svg.line(middle, shaft, new Stroke(Palette.AMBER, 3, "")).dot(shaft, 5.5, Palette.AMBER, Stroke.NONE);
        svg.text(middle.moved(0, -87), "toe", Lettering.LABEL.middle());
        svg.text(middle.moved(0, -72), "more upright", Lettering.NOTE.middle());
        svg.text(middle.moved(0, 81), "flatter", Lettering.NOTE.middle());
        svg.arrow(middle.moved(side * -30, 108), middle.moved(side * 30, 108), Stroke.THIN);
        svg.text(middle.moved(0, 127), "target", Lettering.LABEL.middle());
        svg.text(middle.moved(0, 156), hand, Lettering.HEADING.middle());
    }

    private static List<Point> rimPoints() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 72; i++) {
            points.add(rimPoint(i / 6.0));
        }
        return points;
    }

    private static Point rimPoint(double clockH) {
        double lengthMm = CONE_MM / Math.cos(Math.toRadians(DRAWN_BEND_DEG));
        return CAMERA.of(APEX.plus(Mm.direction(clockH, DRAWN_BEND_DEG).times(lengthMm)));
    }

    /** Rounds a circle toward a square, as heads are. */
    private static double rounded(double part) {
        return Math.signum(part) * Math.pow(Math.abs(part), 0.75);
    }

    /** A place in the head frame, mm. */
    private record Mm(double xMm, double yMm, double zMm) {
        /** Along the shaft that leans toward an hour by a bend, length 1. */
        static Mm direction(double clockH, double bendDeg) {
            double lieRad = Math.toRadians(PageClubs.LIE_DEG);
            double bendRad = Math.toRadians(bendDeg);
            double upright = Math.sin(bendRad) * Math.cos(Math.PI / 6 * clockH);
            double forward = Math.sin(bendRad) * Math.sin(Math.PI / 6 * clockH);
            double along = Math.cos(bendRad);
            return new Mm(
                    forward,
                    along * Math.cos(lieRad) - upright * Math.sin(lieRad),
                    along * Math.sin(lieRad) + upright * Math.cos(lieRad));
        }

        Mm plus(Mm other) {
            return new Mm(xMm + other.xMm, yMm + other.yMm, zMm + other.zMm);
        }

        Mm times(double factor) {
            return new Mm(factor * xMm, factor * yMm, factor * zMm);
        }
    }

    /** Looks from the front, turned toward the golfer and raised by these angles, one px a mm. */
    private record Camera(Point origin, double asideDeg, double raisedDeg) {
        Point of(Mm place) {
            double asideRad = Math.toRadians(asideDeg);
            double raisedRad = Math.toRadians(raisedDeg);
            double toward = Math.cos(asideRad) * place.xMm + Math.sin(asideRad) * place.yMm;
            double right = Math.cos(asideRad) * place.yMm - Math.sin(asideRad) * place.xMm;
            return origin.moved(right, Math.sin(raisedRad) * toward - Math.cos(raisedRad) * place.zMm);
        }

        List<Point> of(List<Mm> places) {
            return places.stream().map(this::of).toList();
        }
    }
}
