package org.bagwright.geometry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.bagwright.ClubSketch;
import org.bagwright.GolferSketch;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.HeadForm;
import org.bagwright.domain.club.RatedChange;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.club.StatedHead;
import org.bagwright.domain.option.PoseNumbers;

/** Clubs, sleeves and golfers for the tests of this package. */
record Bench(ClubKind kind, StatedHead head, double golferLieDeg, double leanDeg, Hand hand, HeadForm form) {
    static final String MARK = "A";
    static final String TODAY = "N";

    static Bench driver(double loftDeg, double lieDeg) {
        return driver(loftDeg, lieDeg, 0);
    }

    static Bench driver(double loftDeg, double lieDeg, double faceDeg) {
        StatedHead head = new StatedHead(loftDeg, lieDeg, faceDeg, Optional.empty());
        return new Bench(ClubKind.DRIVER, head, lieDeg, 0, Hand.RIGHT, ClubSketch.ASSUMED_FORM);
    }

    static Bench iron(double loftDeg, double lieDeg) {
        StatedHead head = new StatedHead(loftDeg, lieDeg, 0, Optional.empty());
        return new Bench(ClubKind.IRON, head, lieDeg, 0, Hand.RIGHT, ClubSketch.ASSUMED_FORM);
    }

    Bench heldAt(double lieDeg, double leanDeg) {
        return new Bench(kind, head, lieDeg, leanDeg, hand, form);
    }

    Bench hand(Hand hand) {
        return new Bench(kind, head, golferLieDeg, leanDeg, hand, form);
    }

    Bench statedAt(String mark) {
        StatedHead at = new StatedHead(head.loftDeg(), head.lieDeg(), head.faceDeg(), Optional.of(mark));
        return new Bench(kind, at, golferLieDeg, leanDeg, hand, form);
    }

    Bench soled(double foreAftMm, double heelToeMm, double heightMm) {
        HeadForm soled = ClubSketch.form(
                OptionalDouble.empty(),
                OptionalDouble.of(foreAftMm),
                OptionalDouble.of(heelToeMm),
                OptionalDouble.of(heightMm));
        return new Bench(kind, head, golferLieDeg, leanDeg, hand, soled);
    }

    /** A sleeve whose today's setting is straight, with one other setting, {@link #MARK}. */
    static Sleeve sleeve(Ring... rings) {
        return sleeve(
                ringed(TODAY, true, Ring.STRAIGHT), new SleeveSetting(MARK, List.of(rings), true, Optional.empty()));
    }

    static Sleeve sleeve(SleeveSetting... settings) {
        return new Sleeve("S", List.of(settings));
    }

    static SleeveSetting ringed(String mark, boolean turnsShaft, Ring... rings) {
        return new SleeveSetting(mark, List.of(rings), turnsShaft, Optional.empty());
    }

    static SleeveSetting rated(String mark, double loftDeg, double lieDeg, double faceDeg, Ring... rings) {
        return new SleeveSetting(mark, List.of(rings), true, Optional.of(change(loftDeg, lieDeg, faceDeg)));
    }

    /**
     * How far a head of face 0 sits closed on a flat sole, degrees: the limit of great radii at a matched lie without lean.
     *
     * @param shaft the shaft in the head frame
     */
    static double flatSoleSitsDeg(Vector3D shaft) {
        return Math.toDegrees(Math.atan2(shaft.getX(), shaft.getY()));
    }

    /** A rated change of loft, lie and face, degrees. */
    static RatedChange change(double loftDeg, double lieDeg, double faceDeg) {
        return new RatedChange(OptionalDouble.of(loftDeg), OptionalDouble.of(lieDeg), OptionalDouble.of(faceDeg));
    }

    Club club(Optional<Sleeve> sleeve) {
        Optional<String> today = sleeve.map(value -> value.settings().get(0).mark());
        return new ClubSketch("G", 1, "C", kind, "Clubs!A2")
                .head(head)
                .form(form)
                .sleeve(sleeve.map(Sleeve::name), today)
                .golferLieDeg(golferLieDeg)
                .made();
    }

    Golfer golfer() {
        return new GolferSketch("G")
                .hand(hand)
                .leanDeg(leanDeg)
                .keepsShaftAligned(true)
                .golfer();
    }

    ClubGeometry with(Sleeve sleeve) {
        return ClubGeometry.of(club(Optional.of(sleeve)), Optional.of(sleeve), golfer());
    }

    ClubGeometry glued() {
        return ClubGeometry.of(club(Optional.empty()), Optional.empty(), golfer());
    }

    PoseNumbers ring(double clockH, double bendDeg) {
        return rings(new Ring(clockH, bendDeg));
    }

    PoseNumbers rings(Ring... rings) {
        return with(sleeve(rings)).pose(at(MARK));
    }

    static Choice at(String mark) {
        return new Choice(Optional.of(mark), Bend.NONE);
    }

    static Choice bent(double loftDeg, double lieDeg) {
        return new Choice(Optional.empty(), new Bend(loftDeg, lieDeg));
    }
}
