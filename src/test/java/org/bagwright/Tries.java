package org.bagwright;

/** How often a test tries: fewer times where tests are run once for each of many mutants, {@code -Dtries.percent=10}. */
public final class Tries {
    private static final int PERCENT = Integer.getInteger("tries.percent", 100);

    private Tries() {}

    /** So many of so many tries, at least one. */
    public static int of(int whole) {
        return Math.max(1, whole * PERCENT / 100);
    }
}
