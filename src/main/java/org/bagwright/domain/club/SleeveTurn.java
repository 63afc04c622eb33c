package org.bagwright.domain.club;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How far a sleeve with one ring of marks is turned from one setting to another, on the shorter way.
 *
 * @param passed the marks passed, the wanted one last
 * @param passedOtherWay the marks passed the other way round, where that is no longer; else none
 */
public record SleeveTurn(List<String> passed, List<String> passedOtherWay) {

    private static final double ROUND_H = 12;

    public SleeveTurn {
        passed = List.copyOf(passed);
        passedOtherWay = List.copyOf(passedOtherWay);
    }

    /**
     * The way from one setting of a sleeve to another: the marks stand round the clock by their hours, or in the order of
     * the book where a setting has none.
     *
     * @return empty where a mark is unknown, and for a sleeve with two rings, whose marks stand on no one circle
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
     * What to do to a sleeve to come from one setting to another, in words; for a sleeve with two rings by how many of
     * its places each ring is turned. Empty where a mark is unknown.
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
            int number = ring;
            List<Double> hours = sleeve.settings().stream()
                    .filter(setting -> setting.rings().size() > number)
                    .map(setting -> setting.rings().get(number).clockH() % ROUND_H)
                    .distinct()
                    .sorted()
                    .toList();
            int onward = Math.floorMod(
                    hours.indexOf(after.get(ring).clockH() % ROUND_H)
                            - hours.indexOf(before.get(ring).clockH() % ROUND_H),
                    hours.size());
            int places = Math.min(onward, hours.size() - onward);
            words.add("ring " + (ring + 1)
                    + (places == 0 ? " stays" : places == 1 ? " by 1 place" : " by " + places + " places"));
        }
        return String.join(", ", words);
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
                    Comparator.comparingDouble(setting -> setting.rings().get(0).clockH() % ROUND_H));
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
