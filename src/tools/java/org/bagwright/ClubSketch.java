package org.bagwright;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.BendRange;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubIdentity;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.club.ClubParts;
import org.bagwright.domain.club.Freedom;
import org.bagwright.domain.club.HeadForm;
import org.bagwright.domain.club.Limits;
import org.bagwright.domain.club.StatedHead;
import org.bagwright.domain.club.Targets;
import org.bagwright.domain.units.Swingweight;

/** A club for tests while it is made. What is not set is assumed: a glued shaft, no kit, no bend, no target, in the bag. */
public final class ClubSketch {
    public static final HeadForm ASSUMED_FORM = form(none(), none(), none(), none());
    public static final ClubParts ASSUMED_PARTS =
            new ClubParts(none(), Optional.empty(), Optional.empty(), none(), none(), none(), Optional.empty());
    public static final Targets NO_TARGETS = new Targets(none(), none(), none(), none(), Optional.empty(), none());

    private static final StatedHead PLAIN_HEAD = new StatedHead(30, 62, 0, Optional.empty());

    private final ClubIdentity identity;
    private StatedHead head = PLAIN_HEAD;
    private HeadForm form = ASSUMED_FORM;
    private ClubParts parts = ASSUMED_PARTS;
    private Choice today = new Choice(Optional.empty(), Bend.NONE);
    private boolean inBag = true;
    private Freedom freedom = new Freedom(BendRange.NONE, false, List.of(), false, Limits.NONE);
    private Targets targets = NO_TARGETS;

    public ClubSketch(String golfer, int slot, String name, ClubKind kind, String cell) {
        identity = new ClubIdentity(golfer, slot, name, kind, cell);
    }

    /** Another club that is like this one where nothing else is set. */
    public static ClubSketch like(Club club) {
        ClubSketch sketch = new ClubSketch(club.golfer(), club.slot(), club.name(), club.kind(), club.cell());
        sketch.head = club.head();
        sketch.form = club.form();
        sketch.parts = club.parts();
        sketch.today = club.today();
        sketch.inBag = club.inBag();
        sketch.freedom = club.freedom();
        sketch.targets = club.targets();
        return sketch;
    }

    /** A form without depth and inertia. */
    public static HeadForm form(
            OptionalDouble massKg, OptionalDouble foreAftMm, OptionalDouble heelToeMm, OptionalDouble heightMm) {
        return new HeadForm(massKg, foreAftMm, heelToeMm, heightMm, none(), none());
    }

    /** A square face, stated on the bore. */
    public ClubSketch head(double loftDeg, double lieDeg) {
        return head(new StatedHead(loftDeg, lieDeg, 0, Optional.empty()));
    }

    public ClubSketch head(StatedHead other) {
        head = other;
        return this;
    }

    public ClubSketch form(HeadForm other) {
        form = other;
        return this;
    }

    public ClubSketch lengthM(OptionalDouble lengthM) {
        parts = new ClubParts(
                lengthM,
                parts.sleeve(),
                parts.kit(),
                parts.shaftMassKg(),
                parts.shaftBalanceM(),
                parts.gripMassKg(),
                parts.measured());
        return this;
    }

    public ClubSketch lengthM(double lengthM) {
        return lengthM(OptionalDouble.of(lengthM));
    }

    /** Shaft, grip and the swingweight read on a scale. */
    public ClubSketch built(
            OptionalDouble shaftKg, OptionalDouble shaftBalanceM, OptionalDouble gripKg, Optional<Swingweight> scale) {
        parts = new ClubParts(parts.lengthM(), parts.sleeve(), parts.kit(), shaftKg, shaftBalanceM, gripKg, scale);
        return this;
    }

    /** Its sleeve and today's setting. */
    public ClubSketch sleeve(Optional<String> sleeve, Optional<String> setting) {
        parts = new ClubParts(
                parts.lengthM(),
                sleeve,
                parts.kit(),
                parts.shaftMassKg(),
                parts.shaftBalanceM(),
                parts.gripMassKg(),
                parts.measured());
        today = new Choice(setting, today.weighting(), today.bend());
        return this;
    }

    public ClubSketch sleeve(String sleeve, String setting) {
        return sleeve(Optional.of(sleeve), Optional.of(setting));
    }

    /** Its kit and today's weighting. */
    public ClubSketch kit(String kit, String weighting) {
        parts = new ClubParts(
                parts.lengthM(),
                parts.sleeve(),
                Optional.of(kit),
                parts.shaftMassKg(),
                parts.shaftBalanceM(),
                parts.gripMassKg(),
                parts.measured());
        today = new Choice(today.setting(), Optional.of(weighting), today.bend());
        return this;
    }

    public ClubSketch bent(Bend bend) {
        today = new Choice(today.setting(), today.weighting(), bend);
        return this;
    }

    public ClubSketch bends(BendRange range) {
        freedom = new Freedom(range, freedom.pinned(), freedom.allowed(), freedom.optional(), freedom.limits());
        return this;
    }

    public ClubSketch pinned(boolean pinned) {
        freedom = new Freedom(freedom.bendRange(), pinned, freedom.allowed(), freedom.optional(), freedom.limits());
        return this;
    }

    public ClubSketch allowed(List<String> marks) {
        freedom = new Freedom(freedom.bendRange(), freedom.pinned(), marks, freedom.optional(), freedom.limits());
        return this;
    }

    public ClubSketch optional() {
        freedom = new Freedom(freedom.bendRange(), freedom.pinned(), freedom.allowed(), true, freedom.limits());
        return this;
    }

    public ClubSketch limits(Limits limits) {
        freedom = new Freedom(freedom.bendRange(), freedom.pinned(), freedom.allowed(), freedom.optional(), limits);
        return this;
    }

    public ClubSketch onBench() {
        inBag = false;
        return this;
    }

    public ClubSketch targets(Targets other) {
        targets = other;
        return this;
    }

    /** The swingweight it should have, points above A0. */
    public ClubSketch swingweight(double scalePoints) {
        targets = new Targets(
                targets.loftDeg(),
                targets.lieDeg(),
                targets.carryM(),
                targets.gapWishM(),
                Optional.of(new Swingweight(scalePoints)),
                targets.golferLieDeg());
        return this;
    }

    /** The lie at which the golfer holds it, degrees. */
    public ClubSketch golferLieDeg(double lieDeg) {
        targets = new Targets(
                targets.loftDeg(),
                targets.lieDeg(),
                targets.carryM(),
                targets.gapWishM(),
                targets.swingweight(),
                OptionalDouble.of(lieDeg));
        return this;
    }

    public Club made() {
        return new Club(identity, head, form, parts, today, inBag, freedom, targets);
    }

    private static OptionalDouble none() {
        return OptionalDouble.empty();
    }
}
