package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.book.CellChange;
import org.bagwright.domain.gauge.GaugedBook;
import org.bagwright.domain.gauge.GaugedClub;
import org.bagwright.domain.gauge.GaugedNumber;
import org.bagwright.domain.gauge.GaugedReading;
import org.bagwright.domain.text.Numbers;

/** What gauge readings show, as a terminal prints it. */
public final class GaugeText {
    private static final String READINGS = "  %-14s %-10s %8s %7s %8s %7s  %s";

    private final GaugedBook gauged;

    public GaugeText(GaugedBook gauged) {
        this.gauged = gauged;
    }

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        gauged.clubs().forEach(club -> club(lines, club));
        lines.add("Angles in degrees. +- is one standard error for a gauge that repeats to "
                + gauged.repeatability().inWords() + ".");
        lines.add("Off is the reading minus what the fit expects.");
        return lines;
    }

    private static void club(List<String> lines, GaugedClub fit) {
        lines.add(fit.club().golfer() + ", " + fit.club().name()
                + fit.club().sleeve().map(name -> ", sleeve " + name).orElse(", no sleeve"));
        lines.add(row("", "found", "stated"));
        String at =
                fit.club().head().statedAt().map(mark -> "at setting " + mark).orElse("on the bore");
        lines.add(number("gauge loft " + at, fit.gauge().loft()));
        lines.add(number("gauge lie " + at, fit.gauge().lie()));
        lines.add(number("design loft", fit.design().loft()));
        lines.add(number("design lie", fit.design().lie()));
        lines.add(number("design face, closed +", fit.design().face()));
        fit.sleeve().ifPresent(sleeve -> {
            lines.add(number("bend of the sleeve", sleeve.bend()));
            lines.add(number("marks off, hours late +", sleeve.clockOffset()));
        });
        lines.add("");
        lines.add(String.format(READINGS, "reading", "setting", "loft", "off", "lie", "off", "")
                .stripTrailing());
        fit.readings().forEach(reading -> lines.add(reading(reading)));
        fit.held().forEach(held -> lines.add("  Held: " + held));
        fit.notes().forEach(note -> lines.add("  Note: " + note));
        lines.add("");
    }

    private static String number(String what, GaugedNumber number) {
        String error = number.standardErrorMeasureUnits().isPresent()
                ? " +- " + Numbers.fixed(number.standardErrorMeasureUnits().getAsDouble(), 2)
                : " held   ";
        return row(
                what,
                Numbers.fixed(number.valueMeasureUnits(), 2) + error,
                Numbers.fixed(number.statedMeasureUnits(), 2));
    }

    private static String row(String what, String found, String stated) {
        return String.format("  %-34s %18s %9s", what, found, stated);
    }

    private static String reading(GaugedReading checked) {
        return String.format(
                        READINGS,
                        checked.reading().cell(),
                        checked.reading().setting().orElse(""),
                        shown(checked.reading().loftDeg(), false),
                        shown(checked.loftResidualDeg(), true),
                        shown(checked.reading().lieDeg(), false),
                        shown(checked.lieResidualDeg(), true),
                        checked.flagged() ? "disagrees, left out" : "")
                .stripTrailing();
    }

    private static String shown(OptionalDouble value, boolean signed) {
        if (value.isEmpty()) {
            return "";
        }
        return signed ? Numbers.signed(value.getAsDouble(), 2) : Numbers.fixed(value.getAsDouble(), 2);
    }

    /** Every cell that was written. */
    public static List<String> changes(List<CellChange> changes) {
        if (changes.isEmpty()) {
            return List.of("The readings give nothing to write.");
        }
        return changes.stream()
                .map(change ->
                        "  " + change.cell() + " " + change.what() + ": " + change.before() + " -> " + change.after())
                .toList();
    }
}
