package org.bagwright.docs;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.bagwright.domain.option.PoseNumbers;

/** The numbers of the page, by the name of the block in which they stand. */
final class WhyNumbers {
    private static final Map<String, Supplier<String>> BY_NAME = new LinkedHashMap<>();

    static {
        BY_NAME.put("step-forward", () -> Figures.fixed(PageClubs.shaftTop(3).forwardMm(), 0));
        BY_NAME.put("shaft-height", () -> Figures.fixed(PageClubs.shaftTop(3).heightMm(), 0));
        BY_NAME.put("shaft-reach", () -> Figures.fixed(PageClubs.shaftTop(3).reachMm(), 0));
        BY_NAME.put("loft-per-bend", () -> Figures.fixed(loftChangeDeg(PageClubs.driver(3)), 2));
        BY_NAME.put("lie-change-at-3", () -> Figures.fixed(lieChangeDeg(PageClubs.driver(3)), 2));
        BY_NAME.put("lie-change-at-12", () -> Figures.fixed(lieChangeDeg(PageClubs.driver(12)), 2));
        BY_NAME.put("round-the-clock", WhyTables::roundTheClock);
        BY_NAME.put("two-rings-same", () -> Figures.fixed(loftChangeDeg(ClockCurvePicture.rings(3, 3)), 2));
        BY_NAME.put("two-rings-apart", () -> Figures.fixed(loftChangeDeg(ClockCurvePicture.rings(1.5, 4.5)), 2));
        BY_NAME.put("two-rings-apart-lie", () -> Figures.fixed(lieChangeDeg(ClockCurvePicture.rings(1.5, 4.5)), 2));
        BY_NAME.put("sits-at-3", () -> Figures.fixed(PageClubs.driver(3).sitsClosedDeg(), 1));
        BY_NAME.put("least-loft-as-it-sits", () -> Figures.fixed(leastLoftAsItSitsDeg(), 2));
        BY_NAME.put("most-loft-as-it-sits", () -> Figures.fixed(mostLoftAsItSitsDeg(), 2));
        BY_NAME.put(
                "contact-back",
                () -> Figures.fixed(-PageClubs.driver(3).address().contactShiftMm(), 1));
        BY_NAME.put("balance-ahead", () -> Figures.fixed(SolePicture.aheadMm(), 1));
        BY_NAME.put("loft-for-face", WhyTables::loftForFace);
        BY_NAME.put("loft-per-face", () -> Figures.fixed(loftPerFaceRatio(PageClubs.LIE_DEG), 2));
        BY_NAME.put("face-for-two", () -> Figures.fixed(2 / loftPerFaceRatio(PageClubs.LIE_DEG), 1));
        BY_NAME.put("lie-and-face", WhyTables::lieAndFace);
        BY_NAME.put(
                "face-at-12", () -> Figures.fixed(PageClubs.driver(12).address().faceHeadingDeg(), 2));
        BY_NAME.put("driver-face-per-lie", () -> Figures.fixed(PageClubs.faceHeadingDeg(10, 1), 2));
        BY_NAME.put("wedge-face-per-lie", () -> Figures.fixed(PageClubs.faceHeadingDeg(56, 1), 2));
        BY_NAME.put("yards-in-100", () -> Figures.fixed(100 * Math.tan(Math.toRadians(1)), 1));
    }

    private WhyNumbers() {}

    static Map<String, Supplier<String>> byName() {
        return BY_NAME;
    }

    static double loftChangeDeg(PoseNumbers pose) {
        return pose.gaugeLoftDeg() - PageClubs.LOFT_DEG;
    }

    static double lieChangeDeg(PoseNumbers pose) {
        return pose.gaugeLieDeg() - PageClubs.LIE_DEG;
    }

    /**
     * Loft lost for a degree of face while a driver at hour 3 turns about its shaft, from a square edge to as it sits;
     * a small bend, so that the whole way is near square.
     */
    static double loftPerFaceRatio(double lieDeg) {
        PoseNumbers pose = PageClubs.barelyBent(lieDeg);
        return (pose.address().loftDeg() - pose.resting().loftDeg()) / pose.sitsClosedDeg();
    }

    private static double leastLoftAsItSitsDeg() {
        double leastDeg = 90;
        for (double clockH = 0; clockH < 12; clockH += 0.25) {
            leastDeg = Math.min(leastDeg, PageClubs.driver(clockH).resting().loftDeg());
        }
        return leastDeg;
    }

    private static double mostLoftAsItSitsDeg() {
        double mostDeg = 0;
        for (double clockH = 0; clockH < 12; clockH += 0.25) {
            mostDeg = Math.max(mostDeg, PageClubs.driver(clockH).resting().loftDeg());
        }
        return mostDeg;
    }
}
