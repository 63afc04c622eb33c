package org.bagwright.balance;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.ClubSketch;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.HeadForm;
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.PortPiece;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.units.Swingweight;

/**
 * A club for the tests of this package, in the units of a bench: grams, inches, g cm2.
 *
 * @param headInertiaGCm2 NaN leaves the cell blank, as in every other number
 */
record BalanceBench(
        ClubKind kind,
        double loftDeg,
        double lieDeg,
        double lengthIn,
        double headG,
        double headInertiaGCm2,
        double shaftG,
        double shaftBalanceIn,
        double gripG,
        Optional<Swingweight> measured,
        List<Weighting> kit) {

    static final double M_PER_IN = 0.0254;
    static final double G_IN_PER_OZ_IN = 28.349523125;

    /** 45 in, head 200 g and 4500 g cm2, shaft 60 g balancing at 22 in, grip 50 g: all typical. */
    static final BalanceBench DRIVER =
            new BalanceBench(ClubKind.DRIVER, 10.5, 58, 45, 200, 4500, 60, 22, 50, Optional.empty(), List.of());

    /** 37 in, head 270 g and 2400 g cm2, shaft 110 g balancing at 18 in, grip 50 g: all typical. */
    static final BalanceBench SEVEN_IRON =
            new BalanceBench(ClubKind.IRON, 30, 62.5, 37, 270, 2400, 110, 18, 50, Optional.empty(), List.of());

    static PortPiece piece(double massG, double xMm, double yMm, double zMm) {
        return new PortPiece("P", massG / 1000, xMm, yMm, zMm);
    }

    static Optional<Weighting> pieces(PortPiece... pieces) {
        return Optional.of(new Weighting("W", Arrays.asList(pieces)));
    }

    /** The swingweight of a build and so many points more. */
    static Swingweight plus(BuildNumbers now, double points) {
        return new Swingweight(now.swingweight().scalePoints() + points);
    }

    /** A head of 250 g and 3000 g cm2 on a club of this kind. */
    static BalanceBench of(ClubKind kind) {
        return new BalanceBench(kind, 20, 60, 40, 250, 3000, 80, 19, 50, Optional.empty(), List.of());
    }

    BalanceBench withLengthIn(double other) {
        return new BalanceBench(
                kind, loftDeg, lieDeg, other, headG, headInertiaGCm2, shaftG, shaftBalanceIn, gripG, measured, kit);
    }

    BalanceBench withHeadG(double other) {
        return new BalanceBench(
                kind, loftDeg, lieDeg, lengthIn, other, headInertiaGCm2, shaftG, shaftBalanceIn, gripG, measured, kit);
    }

    BalanceBench withHeadInertiaGCm2(double other) {
        return new BalanceBench(
                kind, loftDeg, lieDeg, lengthIn, headG, other, shaftG, shaftBalanceIn, gripG, measured, kit);
    }

    BalanceBench withShaft(double otherG, double otherBalanceIn) {
        return new BalanceBench(
                kind, loftDeg, lieDeg, lengthIn, headG, headInertiaGCm2, otherG, otherBalanceIn, gripG, measured, kit);
    }

    BalanceBench withGripG(double other) {
        return new BalanceBench(
                kind, loftDeg, lieDeg, lengthIn, headG, headInertiaGCm2, shaftG, shaftBalanceIn, other, measured, kit);
    }

    /** Read on a scale today, with the first of these weightings in. */
    BalanceBench measured(Swingweight reading, Weighting... weightings) {
        return new BalanceBench(
                kind,
                loftDeg,
                lieDeg,
                lengthIn,
                headG,
                headInertiaGCm2,
                shaftG,
                shaftBalanceIn,
                gripG,
                Optional.of(reading),
                List.of(weightings));
    }

    ClubBalance balance() {
        return ClubBalance.of(club(), kit.isEmpty() ? Optional.empty() : Optional.of(new Kit("K", kit)));
    }

    BuildNumbers build() {
        return balance().build(Optional.empty());
    }

    double swingweightPoints() {
        return build().swingweight().scalePoints();
    }

    Club club() {
        HeadForm form = new HeadForm(
                stated(headG / 1000),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                stated(headInertiaGCm2 * 1e-7));
        ClubSketch club = new ClubSketch("Ann", 1, "Club", kind, "Clubs!C2")
                .head(loftDeg, lieDeg)
                .form(form)
                .lengthM(stated(lengthIn * M_PER_IN))
                .built(stated(shaftG / 1000), stated(shaftBalanceIn * M_PER_IN), stated(gripG / 1000), measured);
        return kit.isEmpty() ? club.made() : club.kit("K", kit.get(0).name()).made();
    }

    private static OptionalDouble stated(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
