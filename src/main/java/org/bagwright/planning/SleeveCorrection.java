package org.bagwright.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bagwright.domain.Correction;
import org.bagwright.domain.Correction.Item;
import org.bagwright.domain.Correction.SettingRow;
import org.bagwright.domain.Limit;
import org.bagwright.domain.Message;
import org.bagwright.domain.Numbers;
import org.bagwright.domain.Ring;
import org.bagwright.domain.Sleeve;
import org.bagwright.domain.SleeveSetting;
import org.bagwright.geometry.Estimate;
import org.bagwright.planning.BookFits.ClubFit;

/**
 * What the clubs that share a sleeve tell of it together: the mean of the bends and clock offsets that their readings
 * determine, each weighted by one over the square of its standard error. All rings keep the proportion of their stated
 * bends and are turned by one clock offset. Settings with a rated table stay as their table has them.
 */
final class SleeveCorrection {
    private static final double TURNED_H = 3;
    private static final double DISAGREE = 3;

    private final Sleeve sleeve;
    private final List<ClubFit> fits;
    private final Optional<Mean> share;
    private final Optional<Mean> offsetH;
    private final List<Correction> corrections = new ArrayList<>();
    private final List<Message> messages = new ArrayList<>();
    private final Sleeve corrected;

    /** A weighted mean with its standard error, and in words of what. */
    private record Mean(double valueMeasureUnits, double errorMeasureUnits, String source) {}

    /** One club's part of a mean. */
    private record Part(ClubFit fit, double valueMeasureUnits, double errorMeasureUnits) {
        double weight() {
            return 1 / (errorMeasureUnits * errorMeasureUnits);
        }
    }

    /** @param fits the fits of the clubs that have this sleeve, at least one */
    SleeveCorrection(Sleeve sleeve, List<ClubFit> fits) {
        this.sleeve = sleeve;
        this.fits = fits.stream().filter(this::isUsable).toList();
        share = mean("bend", fit -> fit.found().bend(), SleeveCorrection::bendPart);
        offsetH = mean("clock", fit -> fit.found().clockOffset(), this::clockPart);
        corrected = new Sleeve(
                sleeve.name(), sleeve.settings().stream().map(this::corrected).toList());
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

    /** A bend whose marks point the other way, the clock not determined, cannot be told by a bend alone. */
    private boolean isUsable(ClubFit fit) {
        Estimate clock = fit.found().clockOffset().orElseThrow();
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
            String what, Function<ClubFit, Optional<Estimate>> estimate, Function<ClubFit, Part> part) {
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

    private static Part bendPart(ClubFit fit) {
        Estimate bend = fit.found().bend().orElseThrow();
        double scale = fit.found().statedBendDeg() > 0 ? fit.found().statedBendDeg() : 1;
        return new Part(
                fit,
                bend.valueMeasureUnits() / scale,
                bend.standardErrorMeasureUnits().orElseThrow() / scale);
    }

    /** Counted from the first club that tells it, so that 5.9 hours late and 5.9 hours early are near each other. */
    private Part clockPart(ClubFit fit) {
        double firstH = fits.stream()
                .map(each -> each.found().clockOffset().orElseThrow())
                .filter(clock -> !clock.held())
                .mapToDouble(Estimate::valueMeasureUnits)
                .findFirst()
                .orElse(0);
        Estimate clock = fit.found().clockOffset().orElseThrow();
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
        String texts =
                parts.stream().map(part -> Corrections.source(part.fit())).collect(Collectors.joining(", "));
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
        double bendDeg = share.map(mean -> Corrections.rounded(mean.valueMeasureUnits() * perShare))
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
        double wrapped = Corrections.rounded(hour - 12 * Math.floor(hour / 12));
        return wrapped == 0 ? 12 : wrapped;
    }

    private double statedBendDeg() {
        return fits.isEmpty() ? 0 : fits.get(0).found().statedBendDeg();
    }

    private void warnOfTables(List<ClubFit> all) {
        boolean table = sleeve.settings().stream()
                .anyMatch(setting -> setting.ratedShaft().isPresent());
        for (ClubFit fit : table ? all : List.<ClubFit>of()) {
            Estimate bend = fit.found().bend().orElseThrow();
            if (!bend.held()) {
                messages.add(Message.assumed(
                        fit.club().cell(),
                        "sleeve " + sleeve.name() + " has its own table, which is used: as one ring on "
                                + fit.club().name() + " it bends by "
                                + Numbers.fixed(fit.found().statedBendDeg(), 2) + " degrees, but the readings give "
                                + Numbers.fixed(bend.valueMeasureUnits(), 2) + " +- "
                                + Numbers.fixed(bend.standardErrorMeasureUnits().orElseThrow(), 2)));
            }
        }
    }
}
