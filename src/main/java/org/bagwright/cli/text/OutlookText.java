package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.GapOutlook;
import org.bagwright.domain.plan.LoftAdvice;
import org.bagwright.domain.plan.Sensitivity;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;

/** What a terminal shows of a bag's outlook: the least certain gap, and drivers that are far from their best loft. */
final class OutlookText {
    private static final double WORTH_SAYING_DEG = 1;

    private final LengthUnit distance;

    OutlookText(LengthUnit distance) {
        this.distance = distance;
    }

    List<String> lines(BagResult bag) {
        List<String> lines = new ArrayList<>();
        bag.outlook().ifPresent(outlook -> {
            outlook.leastSureGap().ifPresent(gap -> lines.add(leastSure(bag, gap)));
            bag.optionsOf(bag.planned()).stream()
                    .filter(option -> !option.isEmpty() && option.club().kind() == ClubKind.DRIVER)
                    .map(option -> option.club().slot())
                    .flatMap(slot -> driver(outlook, slot).stream())
                    .forEach(lines::add);
        });
        return lines;
    }

    private String leastSure(BagResult bag, GapOutlook gap) {
        return "Least certain gap: " + name(bag, gap.fromIndex()) + " to " + name(bag, gap.toIndex()) + ", "
                + Numbers.fixed(100 * gap.chanceRatio(), 0) + " % inside " + limits(gap);
    }

    private String limits(GapOutlook gap) {
        if (Double.isInfinite(gap.mostM())) {
            return "its limit of " + shown(gap.leastM()) + " " + distance.label() + " or more";
        }
        return Double.isInfinite(gap.leastM())
                ? "its limit of " + shown(gap.mostM()) + " " + distance.label() + " or less"
                : "its limits of " + shown(gap.leastM()) + " to " + shown(gap.mostM()) + " " + distance.label();
    }

    private Optional<String> driver(BagOutlook outlook, int slot) {
        return outlook.clubs().stream()
                .filter(club -> club.slot() == slot)
                .filter(club -> club.best().advice() != LoftAdvice.BEST)
                .filter(OutlookText::worthSaying)
                .map(this::driver)
                .findFirst();
    }

    private static boolean worthSaying(Sensitivity club) {
        return Math.abs(club.best().loftDeg().orElse(Double.POSITIVE_INFINITY) - club.presentedLoftDeg())
                > WORTH_SAYING_DEG;
    }

    private String driver(Sensitivity club) {
        String gain = "up to " + shown(club.best().carryM() - club.carryM()) + " " + distance.label()
                + " at this speed and path";
        String place = club.best().loftDeg().isEmpty()
                ? ""
                : ", best " + Numbers.fixed(club.best().loftDeg().getAsDouble(), 1) + " deg at address, planned "
                        + Numbers.fixed(club.presentedLoftDeg(), 1);
        return club.club() + ": " + club.best().advice().words() + ", " + gain + place;
    }

    private static String name(BagResult bag, int index) {
        return bag.optionsOf(bag.planned()).get(index).clubText();
    }

    private String shown(double valueM) {
        return Numbers.fixed(distance.fromM(valueM), 1);
    }
}
