package org.bagwright.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.PortPiece;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.units.Swingweight;

/**
 * Mass and balance of one club in any weighting, worked out from its parts: the shaft a uniform rod as long as the club, set
 * at its balance point; the grip a rod of 10.5 in whose balance point is 3.5 in from the butt; the head with empty ports at
 * the club length; the pieces as points.
 *
 * <p>The rods' lengths matter to the club inertia only: a shaft that ends an inch short of the sole has 0.2 % less.
 */
public final class ClubBalance {
    /**
     * From a handbook's worked example: a club of 390 g balances at 29.5 in, and at 31.28 in with a grip 25 g lighter. So the
     * 25 g were at (390 x 29.5 - 365 x 31.28) / 25 = 3.5 in.
     */
    private static final double GRIP_BALANCE_M = 3.5 * 0.0254;

    /** Common practice, without a source. */
    private static final double GRIP_LENGTH_M = 10.5 * 0.0254;

    private final BalanceParts parts;
    private final HeadInertia bareHead;
    private final Vector3D downShaft;
    private final Vector3D acrossShaft;
    private final Optional<Swingweight> measured;
    private final Swingweight todayFromParts;

    private ClubBalance(Club club, Optional<Weighting> today) {
        double lieRad = Math.toRadians(club.head().lieDeg());
        parts = BalanceParts.of(club);
        bareHead = HeadInertia.bare(club.kind(), parts.headMassKg(), parts.headInertiaKgM2());
        downShaft = new Vector3D(0, -Math.cos(lieRad), -Math.sin(lieRad));
        acrossShaft = new Vector3D(0, -Math.sin(lieRad), Math.cos(lieRad));
        measured = club.parts().measured();
        todayFromParts = fromParts(masses(today));
    }

    /**
     * The balance of a club.
     *
     * @param club the club
     * @param kit the kit that the club names; empty exactly for a club without a kit
     * @throws IllegalArgumentException if the club's kit is not given or does not hold today's weighting
     */
    public static ClubBalance of(Club club, Optional<Kit> kit) {
        if (club.kit().isPresent() != kit.isPresent()) {
            throw new IllegalArgumentException("a club's kit is given exactly when the club names one");
        }
        return new ClubBalance(club, kit.map(known -> today(club, known)));
    }

    private static Weighting today(Club club, Kit kit) {
        String name = club.today().weighting().orElseThrow();
        return kit.weighting(name)
                .orElseThrow(() -> new IllegalArgumentException("kit " + kit.name() + " has no weighting " + name));
    }

    /** The parts, stated or assumed. */
    public BalanceParts parts() {
        return parts;
    }

    /**
     * Mass and balance in a weighting; an empty one leaves all ports empty. A measured swingweight holds for the club as it
     * is today, and the change that the pieces make is added to it; the other numbers always come from the parts.
     */
    public BuildNumbers build(Optional<Weighting> weighting) {
        List<MassOnShaft> masses = masses(weighting);
        HeadInertia head = head(weighting);
        double totalKg = masses.stream().mapToDouble(MassOnShaft::massKg).sum();
        return new BuildNumbers(
                parts.lengthM(),
                head.massKg(),
                totalKg,
                swingweight(masses),
                momentKgM(masses, 0) / totalKg,
                masses.stream().mapToDouble(MassOnShaft::aboutButtKgM2).sum(),
                head.verticalKgM2());
    }

    /** The head in a weighting as one rigid body; an empty weighting leaves all ports empty. */
    public HeadInertia head(Optional<Weighting> weighting) {
        return bareHead.with(weighting.map(Weighting::pieces).orElse(List.of()));
    }

    private Swingweight swingweight(List<MassOnShaft> masses) {
        Swingweight computed = fromParts(masses);
        return measured.map(read ->
                        new Swingweight(read.scalePoints() + (computed.scalePoints() - todayFromParts.scalePoints())))
                .orElse(computed);
    }

    private static Swingweight fromParts(List<MassOnShaft> masses) {
        return Swingweight.ofKgM(momentKgM(masses, Swingweight.FULCRUM_M));
    }

    private static double momentKgM(List<MassOnShaft> masses, double aboutM) {
        return masses.stream().mapToDouble(mass -> mass.momentKgM(aboutM)).sum();
    }

    private List<MassOnShaft> masses(Optional<Weighting> weighting) {
        List<MassOnShaft> masses = new ArrayList<>();
        masses.add(MassOnShaft.rod(parts.shaftMassKg(), parts.shaftBalanceM(), parts.lengthM()));
        masses.add(MassOnShaft.rod(parts.gripMassKg(), GRIP_BALANCE_M, GRIP_LENGTH_M));
        masses.add(new MassOnShaft(bareHead.massKg(), parts.lengthM(), 0, bareHead.aboutKgM2(acrossShaft)));
        weighting.map(Weighting::pieces).orElse(List.of()).forEach(piece -> masses.add(point(piece)));
        return masses;
    }

    private MassOnShaft point(PortPiece piece) {
        Vector3D placeM = HeadInertia.placeM(piece);
        return new MassOnShaft(piece.massKg(), parts.lengthM() + placeM.dotProduct(downShaft), placeM.getX(), 0);
    }
}
