package org.bagwright.search.exact;

/** Counts the steps of one search and ends it by {@link Ended} when they or the time are used up or a stop is requested. */
public final class Meter {
    private static final long STEPS_PER_LOOK = 500_000;

    private final SearchClock clock;
    private long mostSteps;
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

    /** @param mostSteps the most steps of work */
    public Meter(long mostSteps, SearchClock clock) {
        this.mostSteps = mostSteps;
        this.clock = clock;
    }

    /** A meter with steps of its own and the same clock. */
    public Meter share(long ownSteps) {
        return new Meter(ownSteps, clock);
    }

    /** Ends at this many steps at the latest. */
    public Meter within(long most) {
        mostSteps = Math.min(mostSteps, most);
        return this;
    }

    /** What to run now and then while steps are counted. */
    public void reportBy(Runnable other) {
        report = other;
    }

    public long steps() {
        return steps;
    }

    public long left() {
        return Math.max(0, mostSteps - steps);
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

    /** Reports, and ends the search if it is time. */
    public void look() {
        report.run();
        if (clock.isOver()) {
            throw new Ended(clock.isStopped() ? ExactEnding.STOPPED : ExactEnding.CAP);
        }
    }
}
