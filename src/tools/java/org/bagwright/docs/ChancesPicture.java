package org.bagwright.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bagwright.learning.HiddenGolfers;
import org.bagwright.learning.StatedChance;

/**
 * The manual's picture of the chances of gaps that were stated against those that came true, for hidden golfers. Run from the
 * top folder of the project; it takes some minutes.
 */
public final class ChancesPicture {
    static final Path FILE = Path.of("src", "docs", "manual", "pictures", "chances.svg");
    private static final int GOLFERS = 150;
    private static final long FIRST_SEED = 6000000;
    private static final double PX_PER_ROOT_CASE = 0.42;
    private static final Point KEY = new Point(440, 110);

    private final HiddenGolfers golfers;

    ChancesPicture(HiddenGolfers golfers) {
        this.golfers = golfers;
    }

    public static void main(String[] args) throws IOException {
        HiddenGolfers golfers = new HiddenGolfers(GOLFERS, FIRST_SEED, true);
        Files.writeString(FILE, new ChancesPicture(golfers).draw().written());
    }

    Svg draw() {
        Svg svg = new Svg(
                660,
                440,
                "Chances of a gap: stated and come true",
                "For each tenth of the stated chances a dot: how often the gap came out inside in truth. Dots on the diagonal"
                        + " are right; a larger dot stands for more cases.");
        Chart chart = new Chart(
                svg, new Chart.Field(84, 52, 320, 320), axis("stated chance, percent"), axis("came true, percent"));
        chart.graph(stated -> stated, Stroke.HELP);
        dots(svg, chart, golfers.tenths(false), false);
        dots(svg, chart, golfers.tenths(true), true);
        key(svg);
        return svg;
    }

    private static Chart.Axis axis(String label) {
        return new Chart.Axis(label, 0, 1, 0.2, share -> Figures.fixed(100 * share, 0));
    }

    private static void dots(Svg svg, Chart chart, List<StatedChance> tenths, boolean third) {
        for (StatedChance tenth : tenths) {
            dot(svg, chart.at(tenth.stated(), tenth.came()), tenth.count(), third);
        }
    }

    private static void dot(Svg svg, Point at, int count, boolean third) {
        double radiusPx = PX_PER_ROOT_CASE * Math.sqrt(count);
        if (third) {
            svg.dot(at, radiusPx, Palette.NONE, new Stroke(Palette.AMBER, 2, ""));
        } else {
            svg.dot(at, radiusPx, Palette.SLATE, Stroke.NONE);
        }
    }

    private static void key(Svg svg) {
        dot(svg, KEY, 300, false);
        svg.text(KEY.moved(18, 4), "balls as published", Lettering.LABEL);
        svg.text(KEY.moved(18, 19), "or between them", Lettering.LABEL);
        dot(svg, KEY.moved(0, 48), 300, true);
        svg.text(KEY.moved(18, 52), "a ball of another kind", Lettering.LABEL);
        svg.line(KEY.moved(-9, 84), KEY.moved(9, 84), Stroke.HELP);
        svg.text(KEY.moved(18, 88), "as stated", Lettering.LABEL);
        svg.text(KEY.moved(-9, 124), "Dots in this key: 300 cases", Lettering.NOTE);
        svg.text(KEY.moved(-9, 140), GOLFERS + " simulated golfers each", Lettering.NOTE);
    }
}
