package org.bagwright.docs;

import java.util.List;
import java.util.Optional;
import org.bagwright.ClubSketch;
import org.bagwright.GolferSketch;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.club.StatedHead;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.geometry.ClubGeometry;

/** The clubs of the page, worked out by the program's own geometry. */
final class PageClubs {
    static final double LOFT_DEG = 9.5;
    static final double LIE_DEG = 58;
    static final double BEND_DEG = 1.7;

    private static final String MARK = "A";
    private static final Golfer GOLFER = new GolferSketch("G").golfer();

    private PageClubs() {}

    /** The driver of the page, its sleeve at this hour. */
    static PoseNumbers driver(double clockH) {
        return driver(LIE_DEG, new Ring(clockH, BEND_DEG));
    }

    /** A driver of this lie, at hour 3 of a sleeve that bends by a twentieth of a degree. */
    static PoseNumbers barelyBent(double lieDeg) {
        return driver(lieDeg, new Ring(3, 0.05));
    }

    /** A driver held at its own lie, behind these rings. */
    static PoseNumbers driver(double lieDeg, Ring... rings) {
        Sleeve sleeve = new Sleeve("S", List.of(new SleeveSetting(MARK, List.of(rings), true, Optional.empty())));
        StatedHead head = new StatedHead(LOFT_DEG, lieDeg, 0, Optional.empty());
        Club club = club(ClubKind.DRIVER, head, Optional.of(MARK), lieDeg);
        return ClubGeometry.of(club, Optional.of(sleeve), GOLFER).pose(new Choice(Optional.of(MARK), Bend.NONE));
    }

    /** Heading of the face of a glued club that is this much too upright for the golfer, degrees closed. */
    static double faceHeadingDeg(double loftDeg, double tooUprightDeg) {
        StatedHead head = new StatedHead(loftDeg, 62, 0, Optional.empty());
        Club club = club(ClubKind.IRON, head, Optional.empty(), 62 - tooUprightDeg);
        return ClubGeometry.of(club, Optional.empty(), GOLFER)
                .pose(new Choice(Optional.empty(), Bend.NONE))
                .address()
                .faceHeadingDeg();
    }

    /** Where the top of a metre of the driver's shaft stands, measured from the hosel in the head frame. */
    static ShaftTop shaftTop(double clockH) {
        PoseNumbers pose = driver(clockH);
        double lieRad = Math.toRadians(pose.gaugeLieDeg());
        double loftRad = Math.toRadians(pose.gaugeLoftDeg() - LOFT_DEG);
        return new ShaftTop(
                1000 * Math.sin(lieRad) * Math.sin(loftRad),
                1000 * Math.cos(lieRad),
                1000 * Math.sin(lieRad) * Math.cos(loftRad));
    }

    /**
     * The top of a metre of shaft.
     *
     * @param forwardMm toward the target, mm
     * @param reachMm toward the golfer, mm
     * @param heightMm above the hosel, mm
     */
    record ShaftTop(double forwardMm, double reachMm, double heightMm) {}

    private static Club club(ClubKind kind, StatedHead head, Optional<String> setting, double golferLieDeg) {
        return new ClubSketch("G", 1, "C", kind, "Clubs!A2")
                .head(head)
                .sleeve(setting.map(mark -> "S"), setting)
                .golferLieDeg(golferLieDeg)
                .made();
    }
}
