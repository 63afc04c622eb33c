package org.bagwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.bagwright.domain.CellChange;
import org.bagwright.domain.GaugedBook;
import org.bagwright.domain.GaugedClub;
import org.bagwright.domain.GaugedNumber;
import org.bagwright.domain.GaugedReading;
import org.bagwright.domain.Numbers;

/** What gauge readings told as a terminal shows it. */
final class GaugeText {
    private static final String READINGS = "  %-14s %-10s %8s %7s %8s %7s  %s";

    private final GaugedBook gauged;

    GaugeText(GaugedBook gauged) {
        this.gauged = gauged;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        gauged.clubs().forEach(club -> club(lines, club));
        lines.add("Angles in degrees. +- is one standard error for a gauge that repeats to "
                + Numbers.trimmed(gauged.repeatabilityDeg()) + " degrees.");
        lines.add("Off is the reading minus what the fit expects.");
        return lines;
    }

    private static void club(List<String> lines, GaugedClub fit) {
        lines.add(fit.club().golfer() + ", " + fit.club().name()
                + fit.club().sleeve().map(name -> ", sleeve " + name).orElse(", no sleeve"));
        lines.add(row("", "found", "stated"));
        String at =
                fit.club().head().statedAt().map(mark -> "at setting " + mark).orElse("on the bore");
        lines.add(number("gauge loft " + at, fit.gaugeLoft()));
        lines.add(number("gauge lie " + at, fit.gaugeLie()));
        lines.add(number("design loft", fit.designLoft()));
        lines.add(number("design lie", fit.designLie()));
        lines.add(number("design face, closed +", fit.designFace()));
        fit.bend().ifPresent(bend -> lines.add(number("bend of the sleeve", bend)));
        fit.clockOffset().ifPresent(clock -> lines.add(number("marks off, hours late +", clock)));
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
    static List<String> changes(List<CellChange> changes) {
        if (changes.isEmpty()) {
            return List.of("The readings give nothing to write.");
        }
        return changes.stream()
                .map(change ->
                        "  " + change.cell() + " " + change.what() + ": " + change.before() + " -> " + change.after())
                .toList();
    }
}
