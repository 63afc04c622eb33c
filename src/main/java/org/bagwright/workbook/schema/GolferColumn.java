package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** The columns of the sheet Golfers. */
public enum GolferColumn implements SheetColumn {
    GOLFER(ColumnSpec.of(Kind.TEXT, "Golfer", "The golfer's name, the same on every sheet.")
            .mustBeFilled()
            .alsoCalled("Name", "Customer", "Client")),
    HAND(ColumnSpec.of(Kind.CHOICE, "Hand", "R for right-handed, L for left-handed.")
            .offering("R", "L")
            .ifBlank("R")
            .alsoCalled("Handedness", "Handed", "Right or left")),
    DRIVER_SPEED(ColumnSpec.number(
                    "Driver speed",
                    Quantity.SPEED,
                    Limit.HEAD_SPEED_MPS,
                    "Head speed with the driver, in the unit of the sheet Start.")
            .ifBlank("assumed")
            .alsoCalled("Driver head speed", "Driver club speed", "Driver club head speed", "Driver swing speed")),
    IRON_SPEED(ColumnSpec.number(
                    "Iron speed",
                    Quantity.SPEED,
                    Limit.HEAD_SPEED_MPS,
                    "Head speed with the 7 iron, in the unit of the sheet Start.")
            .ifBlank("assumed")
            .alsoCalled(
                    "Iron head speed",
                    "Iron club speed",
                    "Iron swing speed",
                    "7 iron speed",
                    "7 iron head speed",
                    "7 iron club speed",
                    "7 iron swing speed",
                    "Seven iron speed")),
    SHAFT_LEAN(ColumnSpec.angle(
                    "Shaft lean",
                    Limit.LEAN_DEG,
                    "Lean of the shaft at address, degrees, toward the target is positive.")
            .ifBlank("0")
            .alsoCalled("Lean", "Forward lean", "Forward shaft lean")),
    SQUARES_FACE(ColumnSpec.yesNo(
                    "Squares face",
                    "yes: the golfer brings the leading edge square at address. no: the head sits as it comes to rest.")
            .ifBlank("yes")
            .alsoCalled("Square face", "Squares the clubface")),
    KEEP_SHAFT_TURNED(ColumnSpec.yesNo(
                    "Keep shaft turned",
                    "yes: any setting is fine, even one that turns the shaft. no: settings that turn the shaft away"
                            + " from today's position are not allowed.")
            .ifBlank("yes")
            .alsoCalled("Shaft may turn")),
    MOST_OPEN(ColumnSpec.angle(
                    "Most open",
                    Limit.SITS_DEG,
                    "Limit: the most open look the golfer accepts as the club sits, degrees open; the sign of a number"
                            + " does not count. Words are read too: 1 open, square, 1 closed (at least 1 closed).")
            .as(Kind.NUMBER_OR_WORD)
            .offering("square")
            .ifBlank("no limit")
            .alsoCalled("Open limit", "Open most")),
    MOST_CLOSED(ColumnSpec.angle(
                    "Most closed",
                    Limit.SITS_DEG,
                    "Limit: the most closed look the golfer accepts as the club sits, degrees closed; the sign of a"
                            + " number does not count. Words are read too: 2 closed, square, 1 open (at least 1 open).")
            .as(Kind.NUMBER_OR_WORD)
            .offering("square")
            .ifBlank("no limit")
            .alsoCalled("Closed limit", "Shut most")),
    GAP_WISH(ColumnSpec.number(
                    "Gap wish",
                    Quantity.DISTANCE,
                    gapM(),
                    "The carry gap wanted between neighbouring clubs, or a word. even: the same gap everywhere."
                            + " today: each gap stays as it is today. A range such as 18-22 is Gap least and Gap most.")
            .as(Kind.NUMBER_OR_WORD)
            .offering("even", "today")
            .ifBlank("even")),
    GAP_LEAST(ColumnSpec.number(
                    "Gap least",
                    Quantity.DISTANCE,
                    leastGapM(),
                    "Limit: the smallest gap that the golfer accepts between neighbouring clubs.")
            .ifBlank("no limit")
            .alsoCalled("Least carry gap")),
    GAP_MOST(ColumnSpec.number(
                    "Gap most",
                    Quantity.DISTANCE,
                    gapM(),
                    "Limit: the largest gap that the golfer accepts between neighbouring clubs.")
            .ifBlank("no limit")
            .alsoCalled("Most carry gap")),
    MOST_CHANGES(ColumnSpec.whole(
                    "Most changes", new Limit(0, 1000, ""), "The most items a plan may change for this golfer.")
            .ifBlank("no limit")
            .alsoCalled("Change limit")),
    NOTE(ColumnSpec.of(Kind.TEXT, "Note", "Your own notes. Bagwright does not read them.")
            .alsoCalled("Comment", "Remark", "Memo"));

    public static final SheetSchema SHEET = new SheetSchema(
            "Golfers",
            "One row per golfer, with at least the name. Hold the pointer over a heading to see what to enter and"
                    + " what a"
                    + " blank cell means.",
            List.of(values()),
            List.of(GOLFER));

    @SuppressWarnings("ImmutableEnumChecker") // its lists are copies that cannot change
    private final ColumnSpec spec;

    GolferColumn(ColumnSpec spec) {
        this.spec = spec;
    }

    @Override
    public ColumnSpec spec() {
        return spec;
    }

    static Limit leastGapM() {
        return new Limit(0, 150, "m");
    }

    static Limit gapM() {
        return new Limit(0.1, 150, "m");
    }
}
