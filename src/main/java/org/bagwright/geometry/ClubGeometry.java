package org.bagwright.geometry;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.option.PoseNumbers;

/**
 * One club in one golfer's hands: the poses of every setting and bend. The numbers hold for either hand.
 *
 * <p>Where a sleeve has a rated table, the table counts: the shaft is put where a gauge reads exactly the rated
 * loft and lie, and the rated face change sets how the head sits; what the table leaves open follows from the rings, or
 * for the face from the shaft. The misfits give how far the geometry alone would be off.
 *
 * <p>A hosel bend leaves face and sole as they are and moves the shaft to where a gauge reads the setting's loft and lie
 * changed by the bend.
 *
 * <p>Immutable; a pose takes some microseconds. Angles carry no error beyond rounding, 1e-12 rad; as it sits 1e-9 rad.
 */
public final class ClubGeometry {
    private final SleeveOnHead sleeved;
    private final Vector3D held;
    private final Sole sole;
    private final ClubKind kind;
    private final OptionalDouble todayClockH;
    private final double sitsOnBoreDeg;

    private ClubGeometry(SleeveOnHead sleeved, Vector3D held, Sole sole, Club club) {
        this.sleeved = sleeved;
        this.held = held;
        this.sole = sole;
        kind = club.kind();
        todayClockH = club.today()
                .setting()
                .map(sleeved::setting)
                .map(setting -> OptionalDouble.of(sleeved.clockH(setting)))
                .orElseGet(OptionalDouble::empty);
        sitsOnBoreDeg = resting(sleeved.shaft(Optional.empty())).edgeHeadingDeg();
    }

    /**
     * The geometry of a club.
     *
     * @param club its head, form, today's setting and the golfer's lie
     * @param sleeve the sleeve that the club names
     * @param golfer gives the shaft lean at address
     * @throws IllegalArgumentException when the sleeve or a setting is missing or the sole's form is impossible, see
     *     {@link SoleForm#problemOf}
     */
    public static ClubGeometry of(Club club, Optional<Sleeve> sleeve, Golfer golfer) {
        Vector3D held =
                AddressPose.heldShaft(club.addressLieDeg(), golfer.address().leanDeg());
        Sole sole = new Sole(SoleForm.of(club));
        return new ClubGeometry(SleeveOnHead.of(club, sleeve), held, sole, club);
    }

    /** Whether some head can have the loft, lie and face that a club states at its setting. */
    public static boolean isPossible(Club club, Optional<Sleeve> sleeve) {
        try {
            SleeveOnHead.of(club, sleeve);
            return true;
        } catch (IllegalArgumentException noHead) {
            return false;
        }
    }

    /** The head as designed, solved exactly from the stated numbers. */
    HeadDesign design() {
        return sleeved.design();
    }

    /**
     * All poses of one option.
     *
     * @param choice setting and bend; without a setting the shaft is in line with the bore
     * @return the numbers, the shaft's turn counted from today's setting
     * @throws IllegalArgumentException when the sleeve has no such setting
     */
    public PoseNumbers pose(Choice choice) {
        Optional<SleeveSetting> setting = choice.setting().map(sleeved::setting);
        GaugeReading gauge = design().gauge(sleeved.shaft(setting)).plus(choice.bend());
        Vector3D shaft = design().shaftFor(gauge);
        HeadPose resting = asRated(resting(shaft), setting);
        return new PoseNumbers(
                new PoseNumbers.Gauge(gauge.loftDeg(), gauge.lieDeg()),
                address(AddressPose.of(design(), shaft, held)),
                new PoseNumbers.Resting(resting.edgeHeadingDeg(), resting.loftDeg()),
                setting.map(this::shaftTurnDeg).orElse(0.0));
    }

    private PoseNumbers.Address address(AddressPose address) {
        Vector3D contact = sole.contactMm(address.pose().up());
        return new PoseNumbers.Address(
                address.pose().loftDeg(),
                address.pose().faceHeadingDeg(),
                address.soleTiltDeg(),
                SoleForm.toeGapMm(kind, address.soleTiltDeg()),
                contact.getX(),
                -contact.getY());
    }

    /** Rated face change less the change that the fitted geometry gives as it sits, degrees; empty where not rated. */
    public OptionalDouble ratedFaceMisfitDeg(String mark) {
        SleeveSetting setting = sleeved.setting(mark);
        OptionalDouble ratedDeg = setting.ratedFaceDeg();
        return ratedDeg.isPresent()
                ? OptionalDouble.of(ratedDeg.getAsDouble() - faceChangeDeg(setting))
                : OptionalDouble.empty();
    }

    /** Rated loft change less the change that the rings give, degrees; empty unless the setting has both. */
    public OptionalDouble ratedLoftMisfitDeg(String mark) {
        Optional<GaugeReading> misfit = sleeved.ratedMisfit(sleeved.setting(mark));
        return misfit.map(value -> OptionalDouble.of(value.loftDeg())).orElseGet(OptionalDouble::empty);
    }

    /** Rated lie change less the change that the rings give, degrees; empty unless the setting has both. */
    public OptionalDouble ratedLieMisfitDeg(String mark) {
        Optional<GaugeReading> misfit = sleeved.ratedMisfit(sleeved.setting(mark));
        return misfit.map(value -> OptionalDouble.of(value.lieDeg())).orElseGet(OptionalDouble::empty);
    }

    /** The sleeve's rated table read as one ring on this head; empty when nothing is rated. */
    public Optional<RatedFit> ratedFit() {
        return sleeved.ratedFit();
    }

    private HeadPose resting(Vector3D shaft) {
        return RestingPose.of(design(), sole, shaft, held);
    }

    /** The resting head turned on about the shaft until the edge heads where the rated table puts it. */
    private HeadPose asRated(HeadPose resting, Optional<SleeveSetting> setting) {
        OptionalDouble misfitDeg =
                setting.map(value -> ratedFaceMisfitDeg(value.mark())).orElseGet(OptionalDouble::empty);
        return misfitDeg.isPresent()
                ? resting.turnedTo(resting.edgeHeadingDeg() + misfitDeg.getAsDouble(), held)
                : resting;
    }

    private double faceChangeDeg(SleeveSetting setting) {
        return resting(sleeved.shaft(Optional.of(setting))).edgeHeadingDeg() - sitsOnBoreDeg;
    }

    /** The fixed sleeve turns the shaft with its ring; a turn of 12 hours is none. */
    private double shaftTurnDeg(SleeveSetting setting) {
        if (!setting.turnsShaft() || todayClockH.isEmpty()) {
            return 0;
        }
        double turnDeg = 30 * (sleeved.clockH(setting) - todayClockH.getAsDouble());
        double wrappedDeg = turnDeg - 360 * Math.floor(turnDeg / 360);
        return wrappedDeg > 180 ? wrappedDeg - 360 : wrappedDeg;
    }
}
