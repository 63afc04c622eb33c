package org.bagwright.domain.units;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bagwright.domain.text.Numbers;

/**
 * A swingweight on the usual lettered scale: A0 is a moment of 161 oz in about a fulcrum 14 in from the butt, a point is
 * 1.75 oz in, and every ten points is another letter, so that D0 is 213.5 oz in (common practice).
 *
 * @param scalePoints points above A0, so that D0 is 30
 */
public record Swingweight(double scalePoints) {

    /** Where the fulcrum of the scale is, from the butt end, metres. */
    public static final double FULCRUM_M = 14 * 0.0254;

    private static final double A0_OZ_IN = 161;
    private static final double OZ_IN_PER_POINT = 1.75;
    private static final double POINTS_PER_LETTER = 10;
    private static final double KG_PER_OZ = 0.028349523125;
    private static final double M_PER_IN = 0.0254;
    private static final Pattern WRITTEN = Pattern.compile("([A-G])\\s*(\\d(?:[.,]\\d+)?)");

    public Swingweight {
        Checks.finite(scalePoints, "swingweight");
    }

    /** The swingweight of a moment about the fulcrum, oz in. */
    public static Swingweight ofOzIn(double momentOzIn) {
        return new Swingweight((momentOzIn - A0_OZ_IN) / OZ_IN_PER_POINT);
    }

    /** The swingweight of a moment about the fulcrum, kg m of mass times arm. */
    public static Swingweight ofKgM(double momentKgM) {
        return ofOzIn(momentKgM / (KG_PER_OZ * M_PER_IN));
    }

    /** A swingweight as written, such as {@code D2} or {@code c 9.5}; empty for anything else. */
    public static Optional<Swingweight> parsed(String text) {
        Matcher written = WRITTEN.matcher(text.strip().toUpperCase(Locale.ROOT));
        if (!written.matches()) {
            return Optional.empty();
        }
        double letters = written.group(1).charAt(0) - 'A';
        return Optional.of(new Swingweight(letters * POINTS_PER_LETTER
                + Double.parseDouble(written.group(2).replace(',', '.'))));
    }

    public double momentOzIn() {
        return A0_OZ_IN + scalePoints * OZ_IN_PER_POINT;
    }

    public double momentKgM() {
        return momentOzIn() * KG_PER_OZ * M_PER_IN;
    }

    /** The swingweight to a tenth of a point, such as {@code D1.5}; outside A0 to G9.9 as points from A0. */
    public String text() {
        double tenths = Math.round(scalePoints * 10) / 10.0;
        if (tenths < 0 || tenths >= 7 * POINTS_PER_LETTER) {
            return "A0 " + Numbers.signed(tenths, 1);
        }
        int letter = (int) Math.floor(tenths / POINTS_PER_LETTER);
        return (char) ('A' + letter) + Numbers.trimmed(tenths - letter * POINTS_PER_LETTER, 1);
    }
}
