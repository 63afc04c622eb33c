package org.bagwright.docs;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * A picture in SVG, written from back to front. It keeps about where its words stand, so that a test can tell words that
 * run out of the picture or into each other.
 */
final class Svg {
    private static final double ARROW_PX = 9;
    private static final double ARROW_HALF_DEG = 17;

    private final double widthPx;
    private final double heightPx;
    private final StringBuilder body = new StringBuilder();
    private final List<Rectangle2D> wordBoxes = new ArrayList<>();
    private final List<String> allWords = new ArrayList<>();

    Svg(double widthPx, double heightPx, String title, String description) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        body.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%.0f\" viewBox=\"0 0 %.0f %.0f\""
                        + " role=\"img\" font-family=\"Arial, Helvetica, sans-serif\">\n",
                widthPx,
                heightPx,
                widthPx,
                heightPx));
        add("<title>" + escaped(title) + "</title>");
        add("<desc>" + escaped(description) + "</desc>");
        add("<rect width=\"100%\" height=\"100%\" fill=\"" + Palette.PAPER + "\"/>");
        text(new Point(20, 28), title, Lettering.TITLE);
    }

    Svg line(Point from, Point to, Stroke stroke) {
        return curve(List.of(from, to), stroke);
    }

    Svg curve(List<Point> points, Stroke stroke) {
        return add("<polyline points=\"" + list(points) + "\" fill=\"none\"" + drawn(stroke) + "/>");
    }

    Svg area(List<Point> outline, String fill, Stroke stroke) {
        return add("<polygon points=\"" + list(outline) + "\" fill=\"" + fill + "\"" + drawn(stroke) + "/>");
    }

    Svg dot(Point centre, double radiusPx, String fill, Stroke stroke) {
        return add("<circle cx=\"" + px(centre.xPx()) + "\" cy=\"" + px(centre.yPx()) + "\" r=\"" + px(radiusPx)
                + "\" fill=\"" + fill + "\"" + drawn(stroke) + "/>");
    }

    /** A line with a head at its end. */
    Svg arrow(Point from, Point to, Stroke stroke) {
        double backDeg = to.angleDegTo(from);
        Point neck = to.toward(backDeg, ARROW_PX * 0.8);
        line(from, neck, stroke);
        Point left = to.toward(backDeg + ARROW_HALF_DEG, ARROW_PX);
        Point right = to.toward(backDeg - ARROW_HALF_DEG, ARROW_PX);
        return area(List.of(to, left, right), stroke.colour(), Stroke.NONE);
    }

    /** A measured length: a thin line with a head at both ends. */
    Svg measure(Point from, Point to) {
        Point middle = new Point((from.xPx() + to.xPx()) / 2, (from.yPx() + to.yPx()) / 2);
        return arrow(middle, from, Stroke.THIN).arrow(middle, to, Stroke.THIN);
    }

    /** Part of a circle, angles in degrees from the right, upward positive. */
    Svg arc(Point centre, double radiusPx, double fromDeg, double toDeg) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= 24; i++) {
            points.add(centre.toward(fromDeg + (toDeg - fromDeg) * i / 24, radiusPx));
        }
        return curve(points, Stroke.THIN);
    }

    Svg text(Point at, String words, Lettering lettering) {
        double startPx = at.xPx() + lettering.startPx(words.length());
        double sizePx = lettering.sizePx();
        remember(words, startPx, at.yPx() - 0.75 * sizePx, lettering.widthPx(words.length()), 0.95 * sizePx);
        return add(textTag(at, lettering, "") + escaped(words) + "</text>");
    }

    /** Words that read upward. */
    Svg upwardText(Point at, String words, Lettering lettering) {
        double endPx = at.yPx() - lettering.startPx(words.length());
        double lengthPx = lettering.widthPx(words.length());
        double sizePx = lettering.sizePx();
        remember(words, at.xPx() - 0.75 * sizePx, endPx - lengthPx, 0.95 * sizePx, lengthPx);
        String turn = " transform=\"rotate(-90 " + px(at.xPx()) + " " + px(at.yPx()) + ")\"";
        return add(textTag(at, lettering, turn) + escaped(words) + "</text>");
    }

    /** Words that run out of the picture or into others, as estimated; empty when all is well. */
    List<String> clashes() {
        List<String> found = new ArrayList<>();
        Rectangle2D paper = new Rectangle2D.Double(0, 0, widthPx, heightPx);
        for (int i = 0; i < wordBoxes.size(); i++) {
            if (!paper.contains(wordBoxes.get(i))) {
                found.add("out of the picture: " + allWords.get(i));
            }
            for (int j = 0; j < i; j++) {
                if (wordBoxes.get(i).intersects(wordBoxes.get(j))) {
                    found.add(allWords.get(j) + " | " + allWords.get(i));
                }
            }
        }
        return found;
    }

    /** The picture as it stands in its file. */
    String written() {
        return body + "</svg>\n";
    }

    private void remember(String words, double leftPx, double topPx, double wPx, double hPx) {
        wordBoxes.add(new Rectangle2D.Double(leftPx, topPx, wPx, hPx));
        allWords.add(words);
    }

    private Svg add(String element) {
        body.append(element).append('\n');
        return this;
    }

    private static String textTag(Point at, Lettering lettering, String more) {
        return "<text x=\"" + px(at.xPx()) + "\" y=\"" + px(at.yPx()) + "\" font-size=\"" + px(lettering.sizePx())
                + "\"" + (lettering.bold() ? " font-weight=\"bold\"" : "") + " text-anchor=\"" + lettering.anchor()
                + "\" fill=\"" + lettering.colour() + "\"" + more + ">";
    }

    private static String drawn(Stroke stroke) {
        String dash = stroke.dash().isEmpty() ? "" : " stroke-dasharray=\"" + stroke.dash() + "\"";
        return stroke.equals(Stroke.NONE)
                ? ""
                : " stroke=\"" + stroke.colour() + "\" stroke-width=\"" + px(stroke.widthPx())
                        + "\" stroke-linejoin=\"round\"" + dash;
    }

    private static String list(List<Point> points) {
        return points.stream()
                .map(point -> px(point.xPx()) + "," + px(point.yPx()))
                .collect(Collectors.joining(" "));
    }

    private static String px(double valuePx) {
        return Figures.plain(valuePx, 1);
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
