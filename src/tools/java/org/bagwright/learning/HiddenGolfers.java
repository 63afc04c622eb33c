package org.bagwright.learning;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.bagwright.learning.Tally.Plans;
import org.bagwright.learning.Tally.Row;

/**
 * Judges the program by golfers whose truth is known. Arguments: how many golfers (150), {@code --seed} and the first seed
 * (1000000; seeds under 10000 are for trying things out), {@code --today-only} for shots with today's set-up and no dates.
 */
public final class HiddenGolfers {
    private static final int TENTHS = 10;
    private static final double[] SHARE_EDGES = {0, 0.1, 0.2, 0.35, 0.5, 0.7, 0.9, 1};

    private final int count;
    private final long firstSeed;
    private final Population population;

    public HiddenGolfers(int count, long firstSeed, boolean moreSetups) {
        this.count = count;
        this.firstSeed = firstSeed;
        this.population = moreSetups ? Population.USUAL : Population.TODAY_ONLY;
    }

    public static void main(String[] args) {
        List<String> given = List.of(args);
        int seed = given.indexOf("--seed");
        boolean counted = !given.isEmpty() && !given.get(0).startsWith("--");
        HiddenGolfers golfers = new HiddenGolfers(
                counted ? Integer.parseInt(given.get(0)) : 150,
                seed < 0 ? 1000000 : Long.parseLong(given.get(seed + 1)),
                !given.contains("--today-only"));
        System.out.print(golfers.table());
    }

    /** The carries and gaps of all golfers with one kind of ball. */
    Tally tally(HiddenGolfer.Ball ball) {
        return tally(seed -> Judgement.of(HiddenGolfer.drawn(seed, population.ofBall(ball)), seed));
    }

    /** The plans of all golfers. */
    Tally plans() {
        return tally(seed -> Judgement.ofPlans(HiddenGolfer.drawn(seed, population)));
    }

    private Tally tally(LongFunction<Tally> judged) {
        return LongStream.range(firstSeed, firstSeed + count)
                .parallel()
                .mapToObj(judged)
                .reduce(new Tally(), (one, other) -> new Tally().add(one).add(other));
    }

    /** The chances of gaps in tenths by what was stated, lowest first; of golfers with a third ball or with the others. */
    public List<StatedChance> tenths(boolean third) {
        Chances chances =
                tally(third ? HiddenGolfer.Ball.THIRD : HiddenGolfer.Ball.BLEND).chances();
        return IntStream.range(0, TENTHS)
                .mapToObj(tenth -> chances.between(tenth / 10.0, (tenth + 1) / 10.0))
                .filter(some -> some.count() > 0)
                .map(some -> new StatedChance(some.meanStated(), some.shareThatCame(), some.count()))
                .toList();
    }

    private String table() {
        StringBuilder text = new StringBuilder();
        text.append(count + " hidden golfers from seed " + firstSeed + "; errors in yd, shares that ranges cover\n");
        Tally blend = tally(HiddenGolfer.Ball.BLEND);
        text.append("\nSix truths of the ball\n").append(errors(blend)).append(chances(blend));
        Tally third = tally(HiddenGolfer.Ball.THIRD);
        text.append("\nA third ball of its own\n").append(errors(third)).append(chances(third));
        Tally plans = plans();
        text.append(penalties(plans)).append(shares(plans.shares())).append(advice());
        return text.append(secondSettings()).toString();
    }

    private String secondSettings() {
        StringBuilder text = new StringBuilder();
        text.append(line(
                "%nError of a change saved by shots with one club: twice as many at one setting, at two settings"));
        for (Device device : List.of(Device.CARRY, Device.BALL_AND_CARRY, Device.FULL_WITH_HEAD)) {
            SecondSetting study = new SecondSetting(device, count, firstSeed);
            text.append(line(
                    "%-28s%8.2f%8.2f",
                    device.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    study.savedRatio(SecondSetting.Design.TWICE),
                    study.savedRatio(SecondSetting.Design.TWO)));
        }
        return text.toString();
    }

    private static String penalties(Tally tally) {
        return line("%nMean penalty, points, and what the plan said")
                + line("today's set-up              %8.1f", tally.meanPoints(Plans::todayPoints))
                + line(
                        "plan for the best guess     %8.1f%8.1f",
                        tally.meanPoints(Plans::guessPoints), tally.meanPoints(Plans::guessSaidPoints))
                + line(
                        "plan for what is likely     %8.1f%8.1f",
                        tally.meanPoints(Plans::likelyPoints), tally.meanPoints(Plans::likelySaidPoints))
                + line("plan that knows the truth   %8.1f", tally.meanPoints(Plans::leastPoints));
    }

    private static String errors(Tally tally) {
        StringBuilder text = new StringBuilder();
        text.append(line("%-28s%8s%8s%8s%8s%8s", "", "median", "90 %", "80 %", "95 %", "cases"));
        for (Row row : Row.values()) {
            text.append(line(
                    "%-28s%8.1f%8.1f%8s%8s%8d",
                    row.label(),
                    tally.errorYd(row, 0.5),
                    tally.errorYd(row, 0.9),
                    share(tally.coverage(row, Tally.NARROW_SD)),
                    share(tally.coverage(row, Tally.WIDE_SD)),
                    tally.count(row)));
        }
        return text.toString();
    }

    private static String chances(Tally tally) {
        StringBuilder text = new StringBuilder("Chance of a gap, stated and come (cases):");
        for (int tenth = 0; tenth < TENTHS; tenth++) {
            text.append(bin(tally.chances().between(tenth / 10.0, (tenth + 1) / 10.0)));
        }
        return text
                + line(
                        "%nBrier score over that of a constant: %.2f",
                        tally.chances().brierRatio());
    }

    private static String shares(Chances shares) {
        StringBuilder text =
                new StringBuilder("\nShare of likely cases in which a setting is best, stated and come (cases):");
        for (int bin = 0; bin + 1 < SHARE_EDGES.length; bin++) {
            text.append(bin(shares.between(SHARE_EDGES[bin], SHARE_EDGES[bin + 1])));
        }
        return text + line("");
    }

    private static String bin(Chances some) {
        return String.format(Locale.ROOT, " %.2f %.2f (%d)", some.meanStated(), some.shareThatCame(), some.count());
    }

    private String advice() {
        NextMeasurement study = new NextMeasurement(count, firstSeed);
        return line("%nMean drop of the true penalty by five more shots, points")
                + line("first advice, and as stated  %8.1f%8.1f", study.advisedPoints(), study.saidPoints())
                + line("some club at some setting    %8.1f", study.someClubPoints())
                + line("better by, standard error    %8.1f%8.1f", study.betterPoints(), study.errorPoints());
    }

    private static String share(OptionalDouble ratio) {
        return ratio.isPresent() ? String.format(Locale.ROOT, "%.2f", ratio.getAsDouble()) : "-";
    }

    private static String line(String format, Object... values) {
        return String.format(Locale.ROOT, format + "%n", values);
    }
}
