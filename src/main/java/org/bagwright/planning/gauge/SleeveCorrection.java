package org.bagwright.planning.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.gauge.Correction;
import org.bagwright.domain.gauge.Correction.Item;
import org.bagwright.domain.gauge.Correction.SettingRow;
import org.bagwright.domain.gauge.GaugedClub;
import org.bagwright.domain.gauge.GaugedClub.GaugedSleeve;
import org.bagwright.domain.gauge.GaugedNumber;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Limit;

/**
 * What the clubs that share a sleeve tell of it together: the mean of the bends and clock offsets that their readings
 * determine, each weighted by one over the square of its standard error. All rings keep the proportion of their stated
 * bends and are turned by one clock offset. Settings with a rated table stay as their table has them.
 */
final class SleeveCorrection {
    private static final double TURNED_H = 3;
    private static final double DISAGREE = 3;

    private final Sleeve sleeve;
    private final List<GaugedClub> fits;
    private final Optional<Mean> share;
    private final Optional<Mean> offsetH;
    private final List<Correction> corrections = new ArrayList<>();
    private final List<Message> messages = new ArrayList<>();
    private final Sleeve corrected;

    /** A weighted mean with its standard error, and in words of what. */
    private record Mean(double valueMeasureUnits, double errorMeasureUnits, String source) {}

    /** One club's part of a mean. */
    private record Part(GaugedClub fit, double valueMeasureUnits, double errorMeasureUnits) {
        double weight() {
            return 1 / (errorMeasureUnits * errorMeasureUnits);
        }
    }

    /** @param fits the fits of the clubs that have this sleeve, at least one */
    SleeveCorrection(Sleeve sleeve, List<GaugedClub> fits) {
        this.sleeve = sleeve;
        this.fits = fits.stream().filter(this::isUsable).toList();
        share = mean("bend", fit -> fit.sleeve().map(GaugedSleeve::bend), SleeveCorrection::bendPart);
        offsetH = mean("clock", fit -> fit.sleeve().map(GaugedSleeve::clockOffset), this::clockPart);
        corrected = new Sleeve(
                sleeve.name(), sleeve.settings().stream().map(this::corrected).toList(), sleeve.cell());
        warnOfTables(fits);
    }

    List<Correction> corrections() {
        return corrections;
    }

    List<Message> messages() {
        return messages;
    }

    /** The sleeve as it reads with all corrections written. */
    Sleeve corrected() {
        return corrected;
    }

    /** A bend whose marks point the other way, the clock not determined, cannot be expressed by a bend alone. */
    private boolean isUsable(GaugedClub fit) {
        GaugedNumber clock = fit.sleeve().orElseThrow().clockOffset();
        boolean turned = clock.held() && Math.abs(clock.valueMeasureUnits()) > TURNED_H;
        if (turned) {
            messages.add(Message.warning(
                    fit.club().cell(),
                    "the bend of " + fit.club().name() + " leans the opposite way to the marks of sleeve "
                            + sleeve.name() + ", so neither is corrected: check the Clock cells"));
        }
        return !turned;
    }

    private Optional<Mean> mean(
            String what, Function<GaugedClub, Optional<GaugedNumber>> estimate, Function<GaugedClub, Part> part) {
        List<Part> parts = fits.stream()
                .filter(fit ->
                        estimate.apply(fit).filter(found -> !found.held()).isPresent())
                .map(part)
                .toList();
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        double weight = parts.stream().mapToDouble(Part::weight).sum();
        double value = parts.stream()
                        .mapToDouble(each -> each.weight() * each.valueMeasureUnits())
                        .sum()
                / weight;
        if (parts.size() > 1) {
            tellOfSharing(what, parts, value);
        }
        return Optional.of(new Mean(value, 1 / Math.sqrt(weight), source(parts)));
    }

    private static Part bendPart(GaugedClub fit) {
        GaugedNumber bend = fit.sleeve().orElseThrow().bend();
        double scale = bend.statedMeasureUnits() > 0 ? bend.statedMeasureUnits() : 1;
        return new Part(
                fit,
                bend.valueMeasureUnits() / scale,
                bend.standardErrorMeasureUnits().orElseThrow() / scale);
    }

    /** Counted from the first club that has one, so that 5.9 hours late and 5.9 hours early are near each other. */
    private Part clockPart(GaugedClub fit) {
        double firstH = fits.stream()
                .map(each -> each.sleeve().orElseThrow().clockOffset())
                .filter(clock -> !clock.held())
                .mapToDouble(GaugedNumber::valueMeasureUnits)
                .findFirst()
                .orElse(0);
        GaugedNumber clock = fit.sleeve().orElseThrow().clockOffset();
        double awayH = clock.valueMeasureUnits() - firstH;
        return new Part(
                fit,
                clock.valueMeasureUnits() - 12 * Math.rint(awayH / 12),
                clock.standardErrorMeasureUnits().orElseThrow());
    }

    private void tellOfSharing(String what, List<Part> parts, double mean) {
        String names = parts.stream().map(part -> part.fit().club().name()).collect(Collectors.joining(", "));
        String cell = parts.get(0).fit().club().cell();
        messages.add(Message.assumed(
                cell,
                "the " + what + " of sleeve " + sleeve.name() + " is the weighted mean for " + names
                        + ", which are assumed to have the same sleeve"));
        boolean disagree = parts.stream()
                .anyMatch(part -> Math.abs(part.valueMeasureUnits() - mean) > DISAGREE * part.errorMeasureUnits());
        if (disagree) {
            messages.add(Message.warning(
                    cell,
                    names + " disagree on the " + what + " of sleeve " + sleeve.name()
                            + " by more than their readings allow: give each its own sleeve on the sheet Sleeves"));
        }
    }

    private static String source(List<Part> parts) {
        String texts = parts.stream().map(part -> part.fit().source()).collect(Collectors.joining(", "));
        return parts.size() == 1 ? "From " + texts : "Weighted mean from " + texts;
    }

    private SleeveSetting corrected(SleeveSetting setting) {
        if (setting.ratedShaft().isPresent()) {
            return setting;
        }
        List<Ring> rings = new ArrayList<>();
        for (int index = 0; index < setting.rings().size(); index++) {
            rings.add(corrected(setting, index));
        }
        return new SleeveSetting(setting.mark(), rings, setting.turnsShaft(), setting.rated());
    }

    private Ring corrected(SleeveSetting setting, int index) {
        Ring ring = setting.rings().get(index);
        boolean straight = ring.bendDeg() == 0 && statedBendDeg() > 0;
        double perShare = statedBendDeg() > 0 ? ring.bendDeg() : 1;
        double bendDeg = share.map(mean -> Correction.rounded(mean.valueMeasureUnits() * perShare))
                .orElse(ring.bendDeg());
        if (!Limit.BEND_DEG.holds(bendDeg)) {
            messages.add(Message.warning(
                    fits.get(0).club().cell(),
                    "the readings make sleeve " + sleeve.name() + " bend by " + Numbers.trimmed(bendDeg)
                            + " degrees, more than any sleeve: setting " + setting.mark() + " stays as stated"));
        }
        if (straight || !Limit.BEND_DEG.holds(bendDeg)) {
            return ring;
        }
        double clockH = offsetH.map(mean -> clock(ring.clockH() + mean.valueMeasureUnits()))
                .orElse(ring.clockH());
        SettingRow row = new SettingRow(sleeve.name(), setting.mark());
        offsetH.ifPresent(mean -> corrections.add(new Correction(
                row,
                index == 0 ? Item.CLOCK : Item.CLOCK_2,
                clockH,
                mean.errorMeasureUnits(),
                ring.clockH(),
                mean.source())));
        share.ifPresent(mean -> corrections.add(new Correction(
                row,
                index == 0 ? Item.BEND : Item.BEND_2,
                bendDeg,
                mean.errorMeasureUnits() * perShare,
                ring.bendDeg(),
                mean.source())));
        return new Ring(clockH, bendDeg);
    }

    /** An hour above 0 to 12, to a hundredth. */
    private static double clock(double hour) {
        double wrapped = Correction.rounded(hour - 12 * Math.floor(hour / 12));
        return wrapped == 0 ? 12 : wrapped;
    }

    private double statedBendDeg() {
        return fits.isEmpty() ? 0 : fits.get(0).sleeve().orElseThrow().bend().statedMeasureUnits();
    }

    private void warnOfTables(List<GaugedClub> all) {
        boolean table = sleeve.settings().stream()
                .anyMatch(setting -> setting.ratedShaft().isPresent());
        for (GaugedClub fit : table ? all : List.<GaugedClub>of()) {
            GaugedNumber bend = fit.sleeve().orElseThrow().bend();
            if (!bend.held()) {
                messages.add(Message.assumed(
                        fit.club().cell(),
                        "sleeve " + sleeve.name() + " has its own table, which is used: as one ring on "
                                + fit.club().name() + " it bends by "
                                + Numbers.fixed(bend.statedMeasureUnits(), 2) + " degrees, but the readings give "
                                + Numbers.fixed(bend.valueMeasureUnits(), 2) + " +- "
                                + Numbers.fixed(bend.standardErrorMeasureUnits().orElseThrow(), 2)));
            }
        }
    }
}
