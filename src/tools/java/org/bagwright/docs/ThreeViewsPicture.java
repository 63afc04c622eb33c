package org.bagwright.docs;

import org.bagwright.docs.PageClubs.ShaftTop;

/** A bend toward the target seen three ways: why it is more loft than its own angle, and more face still. */
final class ThreeViewsPicture {
    private static final double PX_PER_MM = 0.2;
    private static final double WIDER = 4;
    private static final double GROUND_PX = 256;

    private ThreeViewsPicture() {}

    static Svg draw() {
        Svg svg = new Svg(
                720,
                310,
                "One bend, three views",
                "A metre of shaft at a lie of 58 degrees, bent 1.70 degrees toward the target: from the front its height"
                        + " and reach, from the side the loft, from above the face.");
        ShaftTop top = PageClubs.shaftTop(3);
        front(svg, top);
        side(svg, top);
        above(svg, top);
        svg.text(
                new Point(20, 300),
                "The step forward is drawn 4 times too wide. Hour 3, bend 1.70°, lie 58°.",
                Lettering.NOTE);
        return svg;
    }

    private static void front(Svg svg, ShaftTop top) {
        Point foot = new Point(42, GROUND_PX);
        Point end = foot.moved(PX_PER_MM * top.reachMm(), -PX_PER_MM * top.heightMm());
        Point corner = new Point(end.xPx(), foot.yPx());
        heading(svg, 20, "From the front", "how high, how far out");
        svg.line(foot.moved(-20, 0), foot.moved(180, 0), Stroke.AXIS);
        svg.line(end, corner, Stroke.HELP);
        svg.line(foot, end, Stroke.FIRST.wide(4));
        svg.arc(foot, 30, 0, PageClubs.LIE_DEG);
        svg.text(foot.moved(36, -10), "58°", Lettering.LABEL);
        svg.text(foot.moved(42, -98), "1000 mm", Lettering.LABEL.end());
        svg.measure(end.moved(14, 0), corner.moved(14, 0));
        svg.text(corner.moved(22, -78), millimetres(top.heightMm()), Lettering.LABEL.strong());
        svg.text(corner.moved(22, -62), "high", Lettering.LABEL);
        svg.measure(foot.moved(0, 10), corner.moved(0, 10));
        svg.text(corner.moved(8, 15), millimetres(top.reachMm()) + " out", Lettering.LABEL.strong());
    }

    private static void side(Svg svg, ShaftTop top) {
        Point foot = new Point(330, GROUND_PX);
        Point bore = foot.moved(0, -PX_PER_MM * top.heightMm());
        Point end = bore.moved(WIDER * PX_PER_MM * top.forwardMm(), 0);
        heading(svg, 268, "From the toe", "the step over the height: loft");
        svg.line(foot.moved(-50, 0), foot.moved(110, 0), Stroke.AXIS);
        result(svg, foot, bore, end, top);
        svg.text(foot.moved(44, -70), degrees(top.forwardMm(), top.heightMm(), 2), Lettering.HEADING);
        svg.text(foot.moved(44, -54), "of loft", Lettering.LABEL);
        svg.measure(foot.moved(-16, 0), bore.moved(-16, 0));
        svg.upwardText(foot.moved(-24, -85), millimetres(top.heightMm()), Lettering.LABEL.middle());
        target(svg, new Point(368, GROUND_PX + 16));
    }

    private static void above(Svg svg, ShaftTop top) {
        Point foot = new Point(560, GROUND_PX);
        Point bore = foot.moved(0, -PX_PER_MM * top.reachMm());
        Point end = bore.moved(WIDER * PX_PER_MM * top.forwardMm(), 0);
        heading(svg, 510, "From above", "the step over the reach: face");
        result(svg, foot, bore, end, top);
        svg.text(foot.moved(44, -48), degrees(top.forwardMm(), top.reachMm(), 1), Lettering.HEADING);
        svg.text(foot.moved(44, -32), "of face", Lettering.LABEL);
        svg.measure(foot.moved(-16, 0), bore.moved(-16, 0));
        svg.upwardText(foot.moved(-24, -53), millimetres(top.reachMm()), Lettering.LABEL.middle());
        svg.text(bore.moved(8, -36), "golfer", Lettering.LABEL.middle());
        target(svg, new Point(598, GROUND_PX + 16));
    }

    private static void result(Svg svg, Point foot, Point bore, Point end, ShaftTop top) {
        svg.line(foot, bore, Stroke.FIRST.wide(2).unbroken());
        svg.line(foot, end, new Stroke(Palette.AMBER, 4, ""));
        svg.dot(foot, 5, Palette.SLATE, Stroke.NONE);
        svg.line(bore, end, Stroke.THIN);
        svg.text(end.moved(8, 4), millimetres(top.forwardMm()), Lettering.LABEL.strong());
        double reachPx = foot.distancePx(bore) * 0.62;
        svg.arc(foot, reachPx, foot.angleDegTo(end), 90);
    }

    private static void heading(Svg svg, double leftPx, String view, String lesson) {
        svg.text(new Point(leftPx, 58), view, Lettering.HEADING);
        svg.text(new Point(leftPx, 75), lesson, Lettering.NOTE);
    }

    private static void target(Svg svg, Point start) {
        svg.arrow(start, start.moved(40, 0), Stroke.THIN);
        svg.text(start.moved(46, 4), "target", Lettering.LABEL);
    }

    private static String millimetres(double lengthMm) {
        return Figures.fixed(lengthMm, 0) + " mm";
    }

    private static String degrees(double stepMm, double overMm, int decimals) {
        return Figures.fixed(Math.toDegrees(Math.atan2(stepMm, overMm)), decimals) + "°";
    }
}
