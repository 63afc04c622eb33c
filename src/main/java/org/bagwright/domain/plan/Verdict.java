package org.bagwright.domain.plan;

/** What is known of the musts and limits of a plan. */
public enum Verdict {
    MET("every must and limit is met"),
    IMPOSSIBLE("not every must can be met"),
    NOT_SETTLED("not every must is met, and whether they can be is not settled in the time");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    public String inWords() {
        return words;
    }

    /** The words with a capital, as they start a sentence. */
    public String sentence() {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
