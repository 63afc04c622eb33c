package org.bagwright.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.session.ClubSession;
import org.bagwright.domain.session.Forecast;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.planning.options.BagMaker;

/**
 * Judges what the program says of sessions by golfers whose truth is known: how often it calls a session other than predicted
 * where nothing changed, and how often it finds that one club has changed by 8 yd. Arguments: how many golfers (400),
 * {@code --seed} and the first seed (1000000; seeds under 10000 are for trying things out), {@code --alone} for a last day on
 * which only the club in question is hit.
 */
public final class HiddenSessions {
    private static final int SHOTS = 8;
    private static final double CHANGE_YD = 8;
    private static final int MOST_DAYS_BEFORE = 3;
    private static final double UNHIT_RATIO = 0.2;

    /**
     * One session against what was predicted.
     *
     * @param kind of the club
     * @param device what the monitor tells
     * @param daysBefore with that club
     * @param changedM by how much the club was truly changed, m
     * @param nextTo whether another club was changed and hit on the same day
     * @param forecast what was predicted, and how it came out
     */
    record Case(ClubKind kind, Device device, long daysBefore, double changedM, boolean nextTo, Forecast forecast) {
        boolean isAlarm() {
            return !forecast.cameOut();
        }

        boolean isFound() {
            return isAlarm() && Math.signum(forecast.offM()) == Math.signum(changedM);
        }

        boolean isChanged() {
            return changedM != 0;
        }
    }

    private final int count;
    private final long firstSeed;

    private final boolean alone;

    HiddenSessions(int count, long firstSeed, boolean alone) {
        this.count = count;
        this.firstSeed = firstSeed;
        this.alone = alone;
    }

    public static void main(String[] args) {
        List<String> given = List.of(args);
        int seed = given.indexOf("--seed");
        boolean counted = !given.isEmpty() && !given.get(0).startsWith("--");
        HiddenSessions golfers = new HiddenSessions(
                counted ? Integer.parseInt(given.get(0)) : 400,
                seed < 0 ? 1000000 : Long.parseLong(given.get(seed + 1)),
                given.contains("--alone"));
        System.out.print(golfers.table());
    }

    /** All sessions of all golfers: each is drawn twice, once with nothing changed and once with one club changed. */
    List<Case> cases() {
        return LongStream.range(firstSeed, firstSeed + count)
                .parallel()
                .boxed()
                .flatMap(seed -> cases(seed).stream())
                .toList();
    }

    private List<Case> cases(long seed) {
        List<Case> all = new ArrayList<>(cases(seed, false));
        cases(seed, true).stream()
                .filter(one -> one.nextTo() || one.isChanged())
                .forEach(all::add);
        return all;
    }

    /** Some days with most clubs, then one day with 8 shots with each. */
    private List<Case> cases(long seed, boolean changes) {
        Dice dice = new Dice(seed);
        HiddenBag bag = HiddenBag.drawn(dice);
        HiddenTruth truth =
                new HiddenTruth(bag, TrueBall.ofTruth((int) Math.floorMod(seed, (long) TrueBall.BLENDS), dice), dice);
        Device device = Device.drawn(dice);
        Population population = Population.USUAL;
        HiddenShots shots = new HiddenShots(bag, truth, device, dice, population);
        int days = 1 + dice.below(MOST_DAYS_BEFORE);
        for (int day = 0; day < days; day++) {
            HiddenShots.Day before = HiddenShots.Day.drawn(7 * day, population, dice);
            bag.clubs().stream()
                    .filter(club -> !dice.chance(UNHIT_RATIO))
                    .forEach(club -> shots.hit(club, club.today(), before, SHOTS));
        }
        Club changed = bag.clubs().get(dice.below(bag.clubs().size()));
        double changedM = LengthUnit.YARD.toM(dice.chance(0.5) ? CHANGE_YD : -CHANGE_YD);
        HiddenShots.Day last = HiddenShots.Day.drawn(7 * days, population, dice);
        bag.clubs().stream()
                .filter(club -> !alone || club.equals(changed))
                .forEach(club ->
                        shots.hit(club, club.today(), last, SHOTS, changes && club.equals(changed) ? changedM : 0));
        HiddenGolfer golfer = new HiddenGolfer(bag, truth, device, shots.shots());
        List<Case> cases = new ArrayList<>();
        for (ClubSession session : sessions(golfer)) {
            boolean onThatDay = changes && session.date().equals(last.date());
            boolean itself = session.club().equals(changed);
            session.forecast()
                    .ifPresent(forecast -> cases.add(new Case(
                            session.club().kind(),
                            device,
                            daysBefore(shots, session),
                            onThatDay && itself ? changedM : 0,
                            onThatDay && !itself,
                            forecast)));
        }
        return cases;
    }

    private static List<ClubSession> sessions(HiddenGolfer golfer) {
        return new BagMaker(golfer.book()).flight(golfer.bag().golfer()).sessions();
    }

    private static long daysBefore(HiddenShots shots, ClubSession session) {
        return shots.shots().stream()
                .filter(shot -> shot.club().equals(session.club().name()))
                .map(shot -> shot.series().date().orElseThrow())
                .filter(session.date().orElseThrow()::isAfter)
                .distinct()
                .count();
    }

    private String table() {
        List<Case> cases = cases();
        StringBuilder text = new StringBuilder();
        text.append(String.format(Locale.ROOT, "%-34s%8s%8s%8s%8s%n", "", "alarms", "cases", "found", "cases"));
        text.append(line("all", cases, one -> !one.nextTo()));
        text.append(line("on the day of another's change", cases, Case::nextTo));
        cases = cases.stream().filter(one -> !one.nextTo()).toList();
        text.append(
                line("driver and woods", cases, one -> one.kind() == ClubKind.DRIVER || one.kind() == ClubKind.WOOD));
        text.append(
                line("hybrids and irons", cases, one -> one.kind() == ClubKind.HYBRID || one.kind() == ClubKind.IRON));
        text.append(line("wedges", cases, one -> one.kind() == ClubKind.WEDGE));
        for (Device device : Device.values()) {
            text.append(line(device.name(), cases, one -> one.device() == device));
        }
        for (int days = 0; days <= MOST_DAYS_BEFORE; days++) {
            int before = days;
            text.append(line("days before with the club: " + days, cases, one -> one.daysBefore() == before));
        }
        return text.toString();
    }

    private static String line(String label, List<Case> cases, Predicate<Case> some) {
        List<Case> same =
                cases.stream().filter(some).filter(one -> !one.isChanged()).toList();
        List<Case> changed = cases.stream().filter(some).filter(Case::isChanged).toList();
        return String.format(
                Locale.ROOT,
                "%-34s%7.1f%%%8d%7.1f%%%8d%n",
                label,
                100.0 * same.stream().filter(Case::isAlarm).count() / same.size(),
                same.size(),
                100.0 * changed.stream().filter(Case::isFound).count() / changed.size(),
                changed.size());
    }
}
