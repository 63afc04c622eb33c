package org.bagwright.docs;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** Every picture of the page and the file it is kept in. */
final class Pictures {
    private static final Map<String, Supplier<Svg>> BY_FILE = new LinkedHashMap<>();

    static {
        BY_FILE.put("bore-cone-clock.svg", ConePicture::draw);
        BY_FILE.put("one-bend-three-views.svg", ThreeViewsPicture::draw);
        BY_FILE.put("round-the-clock.svg", ClockCurvePicture::draw);
        BY_FILE.put("as-it-sits.svg", SitsPicture::draw);
        BY_FILE.put("contact-point.svg", SolePicture::draw);
        BY_FILE.put("lie-and-face.svg", LiePicture::draw);
    }

    private Pictures() {}

    static Map<String, Supplier<Svg>> byFile() {
        return BY_FILE;
    }
}
