package org.bagwright.workbook.template;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.bagwright.workbook.pen.BookColour;

/** Draws the clock by which a sleeve's settings are told. */
final class ClockPicture {
    static final int WIDTH = 1180;
    static final int HEIGHT = 1000;
    static final String IN_WORDS =
            "A clock across the bore of the head: at 12 the shaft leans more upright, toward the toe;"
                    + " at 3 toward the target; at 6 flatter; at 9 away from the target.";
    private static final double CENTRE_X = WIDTH / 2.0;
    private static final double CENTRE_Y = 470;
    private static final double RADIUS = 290;
    private static final double EXAMPLE_HOUR = 1.5;

    private final Graphics2D pen;

    private ClockPicture(Graphics2D pen) {
        this.pen = pen;
    }

    static byte[] png() throws IOException {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        new ClockPicture(pen).draw();
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new FewColours(image).image(), "png", bytes);
        return bytes.toByteArray();
    }

    private void draw() {
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, WIDTH, HEIGHT);
        drawDial();
        drawHours();
        drawExample();
        drawWords();
    }

    private void drawDial() {
        pen.setColor(colour(BookColour.GRID.hex()));
        pen.fill(circle(RADIUS));
        pen.setColor(colour(BookColour.SLATE.hex()));
        pen.setStroke(new BasicStroke(7));
        pen.draw(circle(RADIUS));
        pen.setColor(colour(BookColour.RULE.hex()));
        pen.setStroke(new BasicStroke(3));
        pen.draw(new Line2D.Double(x(9, 200), y(9, 200), x(3, 200), y(3, 200)));
        pen.draw(new Line2D.Double(x(12, 200), y(12, 200), x(6, 200), y(6, 200)));
        pen.setColor(Color.WHITE);
        pen.fill(circle(34));
        pen.setColor(colour(BookColour.SLATE.hex()));
        pen.setStroke(new BasicStroke(5));
        pen.draw(circle(34));
    }

    private void drawHours() {
        for (int hour = 1; hour <= 12; hour++) {
            boolean main = hour % 3 == 0;
            pen.setColor(colour(BookColour.SLATE.hex()));
            pen.setStroke(new BasicStroke(main ? 9 : 4));
            double inner = RADIUS - (main ? 34 : 22);
            pen.draw(new Line2D.Double(x(hour, inner), y(hour, inner), x(hour, RADIUS), y(hour, RADIUS)));
            pen.setColor(colour(BookColour.INK.hex()));
            centred(String.valueOf(hour), x(hour, RADIUS - 66), y(hour, RADIUS - 66), main ? 46 : 32, main);
        }
    }

    private void drawExample() {
        pen.setColor(new Color(0xB8, 0x5C, 0x38));
        pen.setStroke(new BasicStroke(9, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.draw(new Line2D.Double(CENTRE_X, CENTRE_Y, x(EXAMPLE_HOUR, RADIUS - 60), y(EXAMPLE_HOUR, RADIUS - 60)));
        Path2D head = new Path2D.Double();
        head.moveTo(x(EXAMPLE_HOUR, RADIUS - 20), y(EXAMPLE_HOUR, RADIUS - 20));
        head.lineTo(x(EXAMPLE_HOUR - 0.27, RADIUS - 66), y(EXAMPLE_HOUR - 0.27, RADIUS - 66));
        head.lineTo(x(EXAMPLE_HOUR + 0.27, RADIUS - 66), y(EXAMPLE_HOUR + 0.27, RADIUS - 66));
        head.closePath();
        pen.fill(head);
        centred("1:30 or 1.5", x(EXAMPLE_HOUR, RADIUS + 70) + 60, y(EXAMPLE_HOUR, RADIUS + 40), 30, true);
    }

    private void drawWords() {
        pen.setColor(colour(BookColour.INK.hex()));
        centred("more upright", CENTRE_X, 88, 38, true);
        centred("toward the toe", CENTRE_X, 134, 30, false);
        centred("flatter", CENTRE_X, 808, 38, true);
        centred("toward the heel", CENTRE_X, 852, 30, false);
        side(CENTRE_X + RADIUS + 150, "toward", "the target", "more loft");
        side(CENTRE_X - RADIUS - 150, "away from", "the target", "less loft");
        pen.setColor(colour(BookColour.FAINT.hex()));
        centred("The same hours hold for right-handed and left-handed clubs:", CENTRE_X, 918, 28, false);
        centred("3 is always toward the target, 12 always toward the toe.", CENTRE_X, 958, 28, false);
    }

    private void side(double x, String first, String second, String effect) {
        pen.setColor(colour(BookColour.INK.hex()));
        centred(first, x, CENTRE_Y - 44, 38, true);
        centred(second, x, CENTRE_Y, 38, true);
        centred(effect, x, CENTRE_Y + 48, 30, false);
    }

    private void centred(String text, double x, double y, int size, boolean bold) {
        pen.setFont(new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN, size));
        double left = x - pen.getFontMetrics().stringWidth(text) / 2.0;
        double base = y + pen.getFontMetrics().getAscent() * 0.36;
        pen.drawString(text, (float) left, (float) base);
    }

    private static Ellipse2D circle(double radius) {
        return new Ellipse2D.Double(CENTRE_X - radius, CENTRE_Y - radius, 2 * radius, 2 * radius);
    }

    private static double x(double hour, double radius) {
        return CENTRE_X + radius * Math.sin(Math.toRadians(hour * 30));
    }

    private static double y(double hour, double radius) {
        return CENTRE_Y - radius * Math.cos(Math.toRadians(hour * 30));
    }

    private static Color colour(String rgb) {
        return new Color(Integer.parseInt(rgb, 16));
    }
}
