package org.bagwright.search.exact;

import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;

/** Counts the steps of one search and ends it by {@link Ended} when they, the time or the patience are used up. */
public final class Meter {
    private static final long STEPS_PER_LOOK = 500_000;
    private static final double NANOS_PER_S = 1e9;

    private long mostSteps;
    private final long startNanos;
    private final double capS;
    private final BooleanSupplier stop;
    private long steps;
    private long nextLook = STEPS_PER_LOOK;
    private Runnable report = () -> {};

    /** Thrown out of a search that has to end. */
    public static final class Ended extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final ExactEnding why;

        public Ended(ExactEnding why) {
            super(why.name(), null, false, false);
            this.why = why;
        }

        public ExactEnding why() {
            return why;
        }
    }

    private Meter(long mostSteps, long startNanos, double capS, BooleanSupplier stop) {
        this.mostSteps = mostSteps;
        this.startNanos = startNanos;
        this.capS = capS;
        this.stop = stop;
    }

    public static Meter of(ExactLimits limits) {
        return new Meter(limits.mostSteps(), System.nanoTime(), limits.capS(), limits.stop());
    }

    /** A meter with steps of its own, the same clock and the same stop. */
    public Meter share(long ownSteps) {
        return new Meter(ownSteps, startNanos, capS, stop);
    }

    /** Ends at this many steps at the latest. */
    public Meter within(long most) {
        mostSteps = Math.min(mostSteps, most);
        return this;
    }

    public void reportBy(Runnable other) {
        report = other;
    }

    public long steps() {
        return steps;
    }

    public long left() {
        return Math.max(0, mostSteps - steps);
    }

    public double elapsedS() {
        return (System.nanoTime() - startNanos) / NANOS_PER_S;
    }

    /** Adds steps that another meter has counted. */
    public void add(long others) {
        steps += others;
    }

    void spend(long more) {
        steps += more;
        if (steps > mostSteps) {
            throw new Ended(ExactEnding.STEPS);
        }
        if (steps >= nextLook) {
            nextLook = steps + STEPS_PER_LOOK;
            look();
        }
    }

    public void look() {
        report.run();
        if (stop.getAsBoolean()) {
            throw new Ended(ExactEnding.STOPPED);
        }
        if (elapsedS() > capS) {
            throw new Ended(ExactEnding.CAP);
        }
    }

    /** Passes the cost and the bound on at most four times a second. */
    public static Runnable seldom(Meter meter, BiConsumer<Meter, Double> told) {
        double[] nextS = {0};
        return () -> {
            double nowS = meter.elapsedS();
            if (nowS >= nextS[0]) {
                nextS[0] = nowS + 0.25;
                told.accept(meter, nowS);
            }
        };
    }
}
