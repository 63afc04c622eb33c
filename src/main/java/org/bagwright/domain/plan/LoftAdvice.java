package org.bagwright.domain.plan;

/** How a club's carry would change with another loft, at the same head speed and path. */
public enum LoftAdvice {
    MORE("more loft would carry further"),
    LESS("less loft would carry further"),
    BEST("at its best loft");

    private final String words;

    LoftAdvice(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
