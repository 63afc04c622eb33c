package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ChartedBook;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Units;

/** Every option of every club as a table on a terminal. */
public final class ChartText {
    private static final String FORMAT = "%1s %-8s %-10s %5s %5s  %6s %6s %6s %7s %7s  %6s %6s %7s %6s %7s";

    private final ChartedBook charted;
    private final Units units;

    public ChartText(ChartedBook charted) {
        this.charted = charted;
        this.units = charted.book().settings().units();
    }

    /** The names that contain a part, letter case apart. */
    public static List<String> matching(List<String> names, String part) {
        String lower = part.toLowerCase(Locale.ROOT);
        return names.stream()
                .filter(name -> name.toLowerCase(Locale.ROOT).contains(lower))
                .toList();
    }

    public List<String> lines(String clubPart) {
        List<String> lines = new ArrayList<>();
        for (BagOptions bag : charted.bags()) {
            for (SlotOptions slot : bag.slots()) {
                slot.clubs().stream()
                        .filter(club ->
                                !matching(List.of(club.name()), clubPart).isEmpty())
                        .forEach(club -> club(lines, slot, club));
            }
        }
        lines.add("Bends in degrees: + is weaker or more upright. Sits: + is closed. Shift: - is back. * is today,");
        lines.add("x is not allowed. Carry in " + units.distance().label() + ", angles in degrees, spin in rpm.");
        return lines;
    }

    private void club(List<String> lines, SlotOptions slot, Club club) {
        lines.add(club.golfer() + ", " + club.name() + " (" + club.kind().label()
                + (club.inBag() ? ")" : ", not in the bag today)"));
        lines.add(String.format(
                FORMAT,
                "",
                "setting",
                "weighting",
                "loft",
                "lie",
                "loft",
                "lie",
                "sits",
                "shift",
                "shaft",
                "launch",
                "spin",
                "carry",
                "swing",
                "own"));
        lines.add(String.format(
                FORMAT, "", "", "", "bend", "bend", "gauge", "gauge", "", "mm", "turn", "", "", "", "weight",
                "penalty"));
        for (Option option : slot.optionsOf(club)) {
            lines.add(row(slot, option));
        }
        lines.add("");
    }

    private String row(SlotOptions slot, Option option) {
        PoseNumbers pose = option.pose();
        String mark = option.equals(slot.today()) ? "*" : option.open() ? "" : "x";
        return String.format(
                FORMAT,
                mark,
                option.choice().settingText(),
                option.choice().weighting().orElse(""),
                Numbers.signed(option.choice().bend().loftDeg(), 1),
                Numbers.signed(option.choice().bend().lieDeg(), 1),
                Numbers.fixed(pose.gaugeLoftDeg(), 2),
                Numbers.fixed(pose.gaugeLieDeg(), 2),
                Numbers.signed(pose.sitsClosedDeg(), 1),
                Numbers.signed(pose.address().contactShiftMm(), 1),
                Numbers.signed(pose.shaftTurnDeg(), 0),
                option.shot().map(shot -> Numbers.fixed(shot.launchDeg(), 1)).orElse(""),
                option.shot().map(shot -> Numbers.fixed(shot.spinRpm(), 0)).orElse(""),
                option.shot()
                        .map(shot -> Numbers.fixed(units.distance().fromM(shot.carryM()), 1))
                        .orElse(""),
                option.build().swingweight().text(),
                Numbers.fixed(option.terms().totalPoints(), 2));
    }
}
