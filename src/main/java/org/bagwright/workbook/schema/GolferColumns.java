package org.bagwright.workbook.schema;

import java.util.List;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** The sheet Golfers. */
public final class GolferColumns {
    static final Limit GAP_M = new Limit(0.1, 150, "m");

    public static final Column GOLFER = Column.of(Column.Kind.TEXT, "Golfer", "The golfer's name, the same on every sheet.")
            .mustBeFilled();
    public static final Column HAND = Column.of(Column.Kind.CHOICE, "Hand", "R for right-handed, L for left-handed.")
            .offering("R", "L")
            .ifBlank("R");
    public static final Column DRIVER_SPEED = Column.number(
                    "Driver speed",
                    Quantity.SPEED,
                    Limit.HEAD_SPEED_MPS,
                    "Head speed with the driver, in the unit of the sheet Start.")
            .ifBlank("assumed");
    public static final Column IRON_SPEED = Column.number(
                    "Iron speed",
                    Quantity.SPEED,
                    Limit.HEAD_SPEED_MPS,
                    "Head speed with the 7 iron, in the unit of the sheet Start.")
            .ifBlank("assumed");
    public static final Column SHAFT_LEAN = Column.number(
                    "Shaft lean",
                    Quantity.ANGLE,
                    Limit.LEAN_DEG,
                    "Lean of the shaft at address, degrees, toward the target is positive.")
            .ifBlank("0");
    public static final Column SQUARES_FACE = Column.yesNo(
                    "Squares face",
                    "yes: the golfer brings the leading edge square at address. no: the head sits as it comes to rest.")
            .ifBlank("yes");
    public static final Column KEEP_SHAFT_TURNED = Column.yesNo(
                    "Keep shaft turned",
                    "yes: any setting is fine, even one that turns the shaft. no: settings that turn the shaft away"
                            + " from today's position are not allowed.")
            .ifBlank("yes");
    public static final Column MOST_OPEN = Column.number(
                    "Most open",
                    Quantity.ANGLE,
                    Limit.SITS_DEG,
                    "The most open look the golfer accepts, degrees, closed is positive: 1 deg open is -1.")
            .ifBlank("no limit");
    public static final Column MOST_CLOSED = Column.number(
                    "Most closed",
                    Quantity.ANGLE,
                    Limit.SITS_DEG,
                    "The most closed look the golfer accepts, degrees, closed is positive.")
            .ifBlank("no limit");
    public static final Column GAP_WISH = Column.number(
                    "Gap wish",
                    Quantity.DISTANCE,
                    GAP_M,
                    "The carry gap wanted between neighbouring clubs, or the word even: the same gap everywhere.")
            .as(Column.Kind.NUMBER_OR_WORD)
            .offering("even")
            .ifBlank("even");
    public static final Column GAP_LEAST = Column.number(
                    "Gap least", Quantity.DISTANCE, new Limit(0, 150, "m"), "The smallest gap that is good enough.")
            .ifBlank("no limit");
    public static final Column GAP_MOST = Column.number(
                    "Gap most", Quantity.DISTANCE, GAP_M, "The largest gap that is good enough.")
            .ifBlank("no limit");
    public static final Column MOST_CHANGES = Column.whole(
                    "Most changes", new Limit(0, 1000, ""), "The most items a plan may change for this golfer.")
            .ifBlank("no limit");
    static final Column NOTE = Column.of(Column.Kind.TEXT, "Note", "Your own notes. Bagwright does not read them.");

    public static final SheetSchema SHEET = new SheetSchema(
            "Golfers",
            "One row per golfer, with at least the name. Hold the pointer over a heading to see what to enter and"
                    + " what a"
                    + " blank cell means.",
            List.of(
                    GOLFER,
                    HAND,
                    DRIVER_SPEED,
                    IRON_SPEED,
                    SHAFT_LEAN,
                    SQUARES_FACE,
                    KEEP_SHAFT_TURNED,
                    MOST_OPEN,
                    MOST_CLOSED,
                    GAP_WISH,
                    GAP_LEAST,
                    GAP_MOST,
                    MOST_CHANGES,
                    NOTE),
            List.of(GOLFER));

    private GolferColumns() {}
}
