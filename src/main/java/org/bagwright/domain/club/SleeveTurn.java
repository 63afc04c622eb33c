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
 */
public record SleeveTurn(List<String> passed, List<String> passedOtherWay) {

    private static final double ROUND_H = 12;

    public SleeveTurn {
        passed = List.copyOf(passed);
        passedOtherWay = List.copyOf(passedOtherWay);
    }

    /**
     * The way from one setting of a sleeve to another: the marks go round the clock by their hours, or in the order
     * of the book where a setting has none.
     *
     * @return empty where a mark is unknown, and for a sleeve with two rings, whose marks are not on one circle
     */
    public static Optional<SleeveTurn> between(Sleeve sleeve, String from, String to) {
        if (sleeve.settings().stream().anyMatch(setting -> setting.rings().size() > 1)) {
            return Optional.empty();
        }
        List<String> circle =
                roundTheClock(sleeve).stream().map(SleeveSetting::mark).toList();
        int start = place(circle, from);
        int end = place(circle, to);
        return start < 0 || end < 0 ? Optional.empty() : Optional.of(turn(circle, start, end));
    }

    /**
     * How to turn a sleeve from one setting to another, in words; for a sleeve with two rings by how many
     * places each ring is turned. Empty where a mark is unknown.
     */
    public static String inWords(Sleeve sleeve, String from, String to) {
        return between(sleeve, from, to).map(SleeveTurn::inWords).orElseGet(() -> ringWords(sleeve, from, to));
    }

    /** How many marks it is turned. */
    public int marks() {
        return passed.size();
    }

    /** The turn as people say it, such as {@code 2 marks: B, C}. */
    public String inWords() {
        if (passed.isEmpty()) {
            return "stays";
        }
        String count = marks() == 1 ? "1 mark" : marks() + " marks";
        if (passedOtherWay.isEmpty()) {
            return count + ": " + String.join(", ", passed);
        }
        String one = String.join(", ", passed);
        String other = String.join(", ", passedOtherWay);
        return count + " either way: " + (one.equals(other) ? one : one + " or " + other);
    }

    private static String ringWords(Sleeve sleeve, String from, String to) {
        List<Ring> before = sleeve.setting(from).map(SleeveSetting::rings).orElse(List.of());
        List<Ring> after = sleeve.setting(to).map(SleeveSetting::rings).orElse(List.of());
        List<String> words = new ArrayList<>();
        for (int ring = 0; ring < Math.min(before.size(), after.size()); ring++) {
            int places = placesTurned(hours(sleeve, ring), before.get(ring), after.get(ring));
            String turn = places == 0 ? " stays" : places == 1 ? " by 1 place" : " by " + places + " places";
            words.add("ring " + (ring + 1) + turn);
        }
        return String.join(", ", words);
    }

    /** The hours that a ring has among all settings, rising. */
    private static List<Double> hours(Sleeve sleeve, int ring) {
        return sleeve.settings().stream()
                .filter(setting -> setting.rings().size() > ring)
                .map(setting -> hour(setting.rings().get(ring)))
                .distinct()
                .sorted()
                .toList();
    }

    private static int placesTurned(List<Double> hours, Ring before, Ring after) {
        int onward = Math.floorMod(hours.indexOf(hour(after)) - hours.indexOf(hour(before)), hours.size());
        return Math.min(onward, hours.size() - onward);
    }

    private static double hour(Ring ring) {
        return ring.clockH() % ROUND_H;
    }

    private static SleeveTurn turn(List<String> circle, int start, int end) {
        List<String> onward = passed(circle, start, end, 1);
        List<String> back = passed(circle, start, end, -1);
        if (onward.size() == back.size()) {
            return new SleeveTurn(onward, back);
        }
        return new SleeveTurn(onward.size() < back.size() ? onward : back, List.of());
    }

    private static List<SleeveSetting> roundTheClock(Sleeve sleeve) {
        List<SleeveSetting> settings = new ArrayList<>(sleeve.settings());
        if (settings.stream().allMatch(setting -> setting.rings().size() == 1)) {
            settings.sort(
                    Comparator.comparingDouble(setting -> hour(setting.rings().get(0))));
        }
        return settings;
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
