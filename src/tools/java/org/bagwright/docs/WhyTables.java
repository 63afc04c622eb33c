package org.bagwright.docs;

import org.bagwright.domain.option.PoseNumbers;

/** The tables of the page, in Markdown. */
final class WhyTables {
    private WhyTables() {}

    static String roundTheClock() {
        StringBuilder table = table(
                "hour", "gauge loft change", "gauge lie change", "sits closed", "loft as it sits", "contact point, mm");
        double[] hours = {12, 1.5, 3, 4.5, 6, 9};
        for (double clockH : hours) {
            PoseNumbers pose = PageClubs.driver(clockH);
            row(
                    table,
                    Figures.fixed(Math.floor(clockH), 0) + (clockH > Math.floor(clockH) ? ":30" : ""),
                    Figures.signed(WhyNumbers.loftChangeDeg(pose), 2),
                    Figures.signed(WhyNumbers.lieChangeDeg(pose), 2),
                    Figures.signed(pose.sitsClosedDeg(), 1),
                    Figures.fixed(pose.resting().loftDeg(), 2),
                    Figures.signed(pose.address().contactShiftMm(), 1));
        }
        return table.toString();
    }

    static String loftForFace() {
        StringBuilder table = table("lie", "loft for 1° of face", "face for 2° of loft");
        for (int lieDeg : new int[] {57, 58, 60}) {
            double ratio = WhyNumbers.loftPerFaceRatio(lieDeg);
            row(table, lieDeg + "°", Figures.fixed(ratio, 2) + "°", Figures.fixed(2 / ratio, 1) + "°");
        }
        return table.toString();
    }

    static String lieAndFace() {
        StringBuilder table =
                table("loft", "face, lie 1° off", "face, lie 2° off", "face, lie 3° off", "ball, lie 2° off");
        for (int loftDeg : new int[] {10, 30, 50, 60}) {
            double headingDeg = PageClubs.faceHeadingDeg(loftDeg, 2);
            row(
                    table,
                    loftDeg + "°",
                    Figures.fixed(PageClubs.faceHeadingDeg(loftDeg, 1), 2) + "°",
                    Figures.fixed(headingDeg, 2) + "°",
                    Figures.fixed(PageClubs.faceHeadingDeg(loftDeg, 3), 2) + "°",
                    loftDeg > LiePicture.MOST_BALL_LOFT_DEG ? "less still" : ballText(headingDeg));
        }
        return table.toString();
    }

    private static String ballText(double headingDeg) {
        return Figures.fixed(LiePicture.LEAST_TO_FACE_RATIO * headingDeg, 1) + "° to "
                + Figures.fixed(LiePicture.MOST_TO_FACE_RATIO * headingDeg, 1) + "°";
    }

    private static StringBuilder table(String... headings) {
        StringBuilder table = new StringBuilder();
        row(table, headings);
        return table.append("|").append("---:|".repeat(headings.length)).append("\n");
    }

    private static void row(StringBuilder table, String... cells) {
        table.append("| ").append(String.join(" | ", cells)).append(" |\n");
    }
}
