package org.bagwright.domain.club;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How far a sleeve with one ring of marks is turned from one setting to another, on the shorter way.
 *
 * @param passed the marks passed, the mark wanted is the last
 * @param passedOtherWay the marks passed the other way round, where that is not longer; else none
 * @param hoursRise whether the hours of the clock rise on the way to the mark wanted
 */
public record SleeveTurn(List<String> passed, List<String> passedOtherWay, boolean hoursRise) {

    private static final double ROUND_H = 12;

    public SleeveTurn {
        passed = List.copyOf(passed);
        passedOtherWay = List.copyOf(passedOtherWay);
    }

    /**
     * The way from one setting of a sleeve to another round the clock.
     *
     * @return empty where a mark is unknown, where the hours do not tell the marks apart, and for a sleeve with two rings,
     *     whose marks are not on one circle
     */
    public static Optional<SleeveTurn> between(Sleeve sleeve, String from, String to) {
        if (!sleeve.settings().stream().allMatch(setting -> setting.rings().size() == 1)) {
            return Optional.empty();
        }
        List<Double> hours = hours(sleeve, 0);
        if (hours.size() < sleeve.settings().size()) {
            return Optional.empty();
        }
        List<String> circle = sleeve.settings().stream()
                .sorted(Comparator.comparingDouble(
                        setting -> hour(setting.rings().get(0))))
                .map(SleeveSetting::mark)
                .toList();
        int start = place(circle, from);
        int end = place(circle, to);
        return start < 0 || end < 0 ? Optional.empty() : Optional.of(turn(circle, start, end));
    }

    /**
     * How to turn a sleeve from one setting to another, in words, as seen from the grip end; for a sleeve with two rings by
     * how many places each ring is turned. Empty where a mark is unknown, or the way from one to the other.
     */
    public static String inWords(Sleeve sleeve, boolean leftHanded, String from, String to) {
        return between(sleeve, from, to)
                .map(turn -> turn.inWords(leftHanded))
                .orElseGet(() -> ringWords(sleeve, leftHanded, from, to));
    }

    /** How many marks it is turned. */
    public int marks() {
        return passed.size();
    }

    /** The turn as people say it, such as {@code 2 marks clockwise}. */
    public String inWords(boolean leftHanded) {
        if (passed.isEmpty()) {
            return "stays";
        }
        String count = marks() == 1 ? "1 mark " : marks() + " marks ";
        return count + (passedOtherWay.isEmpty() ? way(hoursRise, leftHanded) : "either way");
    }

    /** The clock has 3 toward the target, which a right-hander who looks down the shaft has on his left. */
    private static String way(boolean hoursRise, boolean leftHanded) {
        return hoursRise == leftHanded ? "clockwise" : "counter-clockwise";
    }

    private static String ringWords(Sleeve sleeve, boolean leftHanded, String from, String to) {
        List<Ring> before = sleeve.setting(from).map(SleeveSetting::rings).orElse(List.of());
        List<Ring> after = sleeve.setting(to).map(SleeveSetting::rings).orElse(List.of());
        List<String> words = new ArrayList<>();
        for (int ring = 0; before.size() == 2 && ring < after.size(); ring++) {
            String turn = turnOfRing(hours(sleeve, ring), before.get(ring), after.get(ring), leftHanded);
            words.add("ring " + (ring + 1) + turn);
        }
        return String.join(", ", words);
    }

    private static String turnOfRing(List<Double> hours, Ring before, Ring after, boolean leftHanded) {
        int start = hours.indexOf(hour(before));
        int end = hours.indexOf(hour(after));
        if (start == end) {
            return " stays";
        }
        if (start < 0 || end < 0) {
            return "";
        }
        int onward = Math.floorMod(end - start, hours.size());
        int back = hours.size() - onward;
        int places = Math.min(onward, back);
        return (places == 1 ? " by 1 place" : " by " + places + " places")
                + (onward == back ? " either way" : " " + way(onward < back, leftHanded));
    }

    /** The hours that a ring has among all settings, rising; a ring without a bend points nowhere. */
    private static List<Double> hours(Sleeve sleeve, int ring) {
        return sleeve.settings().stream()
                .filter(setting -> setting.rings().size() > ring)
                .map(setting -> setting.rings().get(ring))
                .filter(found -> found.bendDeg() > 0)
                .map(SleeveTurn::hour)
                .distinct()
                .sorted()
                .toList();
    }

    private static double hour(Ring ring) {
        return ring.clockH() % ROUND_H;
    }

    private static SleeveTurn turn(List<String> circle, int start, int end) {
        List<String> onward = passed(circle, start, end, 1);
        List<String> back = passed(circle, start, end, -1);
        if (onward.size() == back.size()) {
            return new SleeveTurn(onward, back, true);
        }
        boolean rises = onward.size() < back.size();
        return new SleeveTurn(rises ? onward : back, List.of(), rises);
    }

    private static int place(List<String> circle, String mark) {
        return IntStream.range(0, circle.size())
                .filter(index -> circle.get(index).equalsIgnoreCase(mark))
                .findFirst()
                .orElse(-1);
    }

    private static List<String> passed(List<String> circle, int start, int end, int direction) {
        List<String> marks = new ArrayList<>();
        for (int place = start; place != end; ) {
            place = Math.floorMod(place + direction, circle.size());
            marks.add(circle.get(place));
        }
        return marks;
    }
}
