package org.bagwright.geometry;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.RatedChange;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.club.StatedHead;

/** A head and the sleeve in it: where the shaft points at every setting, before any hosel bend. */
final class SleeveOnHead {
    private final HeadDesign design;
    private final Optional<Sleeve> sleeve;

    private SleeveOnHead(HeadDesign design, Optional<Sleeve> sleeve) {
        this.design = design;
        this.sleeve = sleeve;
    }

    /**
     * The head solved from what the club states, at the setting at which it states it.
     *
     * @throws IllegalArgumentException when the club names a sleeve or a setting that is not there
     */
    static SleeveOnHead of(Club club, Optional<Sleeve> sleeve) {
        if (club.sleeve().isPresent() && sleeve.isEmpty()) {
            throw new IllegalArgumentException("the sleeve " + club.sleeve().get() + " is not known");
        }
        var head = club.head();
        Optional<SleeveSetting> statedAt = head.statedAt().map(mark -> settingOf(sleeve, mark));
        GaugeReading stated = new GaugeReading(head.loftDeg(), head.lieDeg());
        Optional<RatedChange> rated = statedAt.flatMap(SleeveSetting::ratedShaft);
        GaugeReading solved = rated.map(stated::minus).orElse(stated);
        Tilt tilt = rated.isPresent() ? Tilt.STRAIGHT : ringTilt(statedAt);
        return new SleeveOnHead(HeadDesign.solve(solved, head.faceDeg(), tilt), sleeve);
    }

    HeadDesign design() {
        return design;
    }

    Optional<Sleeve> sleeve() {
        return sleeve;
    }

    /** @throws IllegalArgumentException when the sleeve has no setting with this mark */
    SleeveSetting setting(String mark) {
        return settingOf(sleeve, mark);
    }

    /**
     * What a club has to state so that its head is solved to be this design, the inverse of {@link #of}.
     *
     * @param statedAt the mark at which it is stated; empty is on the bore
     * @throws IllegalArgumentException when the sleeve has no such setting, or no gauge could read such numbers
     */
    static StatedHead stated(HeadDesign design, Optional<String> statedAt, Optional<Sleeve> sleeve) {
        Optional<SleeveSetting> setting = statedAt.map(mark -> settingOf(sleeve, mark));
        GaugeReading read = design.gauge(new SleeveOnHead(design, sleeve).shaft(setting));
        return new StatedHead(read.loftDeg(), read.lieDeg(), design.faceDeg(), statedAt);
    }

    /** What a gauge reads on the bore. */
    GaugeReading onBore() {
        return design.gauge(design.shaft(Tilt.STRAIGHT));
    }

    /** The shaft in the head frame: as rated where there is a table, else as the rings set it; no setting is the bore. */
    Vector3D shaft(Optional<SleeveSetting> setting) {
        return setting.flatMap(SleeveSetting::ratedShaft)
                .map(change -> design.shaftFor(onBore().plus(change)))
                .orElseGet(() -> design.shaft(ringTilt(setting)));
    }

    /** The hour toward which the ring next to the shaft (the first) points, or the fitted shaft where only rated. */
    double clockH(SleeveSetting setting) {
        return setting.rings().isEmpty()
                ? design.tilt(shaft(Optional.of(setting))).clockH()
                : setting.rings().get(0).clockH();
    }

    /** The rated changes of loft and lie less those that the rings give; empty unless both are there. */
    Optional<GaugeReading> ratedMisfit(SleeveSetting setting) {
        if (setting.rings().isEmpty()) {
            return Optional.empty();
        }
        GaugeReading ringed = design.gauge(design.shaft(Tilt.of(setting.rings())));
        return setting.ratedShaft().map(change -> {
            GaugeReading rated = onBore().plus(change);
            return new GaugeReading(rated.loftDeg() - ringed.loftDeg(), rated.lieDeg() - ringed.lieDeg());
        });
    }

    /** One ring fitted to every rated setting; empty when nothing is rated. */
    Optional<RatedFit> ratedFit() {
        List<RatedFit.FittedRing> rings = sleeve.stream()
                .flatMap(value -> value.settings().stream())
                .filter(setting -> setting.ratedShaft().isPresent())
                .map(this::fittedRing)
                .toList();
        return rings.isEmpty() ? Optional.empty() : Optional.of(RatedFit.of(rings));
    }

    private RatedFit.FittedRing fittedRing(SleeveSetting setting) {
        Tilt tilt = design.tilt(shaft(Optional.of(setting)));
        return new RatedFit.FittedRing(setting.mark(), tilt.clockH(), tilt.bendDeg());
    }

    private static SleeveSetting settingOf(Optional<Sleeve> sleeve, String mark) {
        return sleeve.flatMap(value -> value.setting(mark))
                .orElseThrow(() -> new IllegalArgumentException("no sleeve has the setting " + mark));
    }

    private static Tilt ringTilt(Optional<SleeveSetting> setting) {
        return setting.map(value -> Tilt.of(value.rings())).orElse(Tilt.STRAIGHT);
    }
}
