package org.bagwright.flight.learning;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The unknowns of one golfer in one row of numbers, each in its own standard deviations: first those that all clubs share, one
 * for each day among them, then those of each head.
 */
public final class Unknowns {
    private static final List<Unknown> SHARED =
            Arrays.stream(Unknown.values()).filter(unknown -> !unknown.ofClub()).toList();
    private static final List<Unknown> OF_CLUB =
            Arrays.stream(Unknown.values()).filter(Unknown::ofClub).toList();
    private static final double LENGTH_ABOUT_M = 39 * 0.0254;
    private static final double LENGTH_SCALE_M = 4 * 0.0254;
    private static final double LOFT_ABOUT_DEG = 30;
    private static final double LOFT_SCALE_DEG = 15;

    private final List<Optional<LocalDate>> days;
    private final int heads;
    private final Map<Unknown, Double> golfer;

    /**
     * @param days the days of the shots
     * @param heads how many heads
     * @param golfer standard deviations that are this golfer's own, by what his row leaves open
     */
    public Unknowns(List<Optional<LocalDate>> days, int heads, Map<Unknown, Double> golfer) {
        this.days = List.copyOf(days);
        this.heads = heads;
        this.golfer = new EnumMap<>(Unknown.class);
        SHARED.forEach(unknown -> this.golfer.put(unknown, unknown.standardDeviation()));
        this.golfer.putAll(golfer);
    }

    int count() {
        return sharedCount() + heads * OF_CLUB.size();
    }

    /** How many of them all clubs share. */
    int sharedCount() {
        return SHARED.size() + days.size();
    }

    /** How many each head has for itself. */
    static int headCount() {
        return OF_CLUB.size();
    }

    /** The place of a head's first. */
    int headStart(int head) {
        return sharedCount() + head * OF_CLUB.size();
    }

    /** The place of a day. */
    public int day(Optional<LocalDate> date) {
        return SHARED.size() + days.indexOf(date);
    }

    /**
     * How the arguments of a club depend on the unknowns: a row for each {@link Argument}, a column for each unknown.
     *
     * @param club the club with its stated loft
     * @param head the number of its head
     * @param lnLengthRatio what its length adds to ln head speed against the club that its head was fitted as
     * @param gauged whether its loft was gauged
     */
    public double[][] design(ClubToday club, int head, double lnLengthRatio, boolean gauged) {
        double[][] rows = new double[Argument.COUNT][count()];
        double byLength = (club.lengthM() - LENGTH_ABOUT_M) / LENGTH_SCALE_M;
        double byLoft = (club.loftDeg() - LOFT_ABOUT_DEG) / LOFT_SCALE_DEG;
        put(rows, Argument.LN_HEAD_SPEED, Unknown.SPEED, 1);
        put(rows, Argument.LN_HEAD_SPEED, Unknown.SPEED_BY_LENGTH, byLength);
        put(rows, Argument.LN_HEAD_SPEED, Unknown.LENGTH, lnLengthRatio);
        put(rows, Argument.LN_EFFICIENCY, Unknown.STRIKE, 1);
        put(rows, Argument.LN_EFFICIENCY, Unknown.STRIKE_BY_LOFT, byLoft);
        put(rows, Argument.OFFSET_DEG, Unknown.LOFT, 1);
        put(rows, Argument.OFFSET_DEG, Unknown.LOFT_BY_LOFT, byLoft);
        put(rows, Argument.LN_SPIN, Unknown.SPIN, 1);
        put(rows, Argument.LN_SPIN, Unknown.SPIN_BY_LOFT, byLoft);
        put(rows, Argument.LN_DRAG, Unknown.DRAG, 1);
        put(rows, Argument.LN_LIFT, Unknown.LIFT, 1);
        put(rows, Argument.RESPONSE, Unknown.RESPONSE, 1);
        put(rows, Argument.BALL, Unknown.BALL, 1);
        for (Unknown unknown : OF_CLUB) {
            int column = headStart(head) + OF_CLUB.indexOf(unknown);
            rows[argument(unknown).ordinal()][column] = unknown.standardDeviation(club.kind(), gauged);
        }
        return rows;
    }

    private void put(double[][] rows, Argument argument, Unknown unknown, double factor) {
        rows[argument.ordinal()][SHARED.indexOf(unknown)] = factor * golfer.get(unknown);
    }

    private static Argument argument(Unknown ofClub) {
        return switch (ofClub) {
            case CLUB_SPEED -> Argument.LN_HEAD_SPEED;
            case CLUB_STRIKE -> Argument.LN_EFFICIENCY;
            case CLUB_LOFT -> Argument.OFFSET_DEG;
            case CLUB_SPIN -> Argument.LN_SPIN;
            case CLUB_ATTACK -> Argument.ATTACK_DEG;
            case CLUB_CARRY -> Argument.LN_CARRY;
            default -> throw new IllegalArgumentException(ofClub + " is not of a club");
        };
    }
}
