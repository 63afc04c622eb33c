package org.bagwright.domain.plan;

/** What is known of the musts and limits of a plan. */
public enum Verdict {
    MET("every must and limit is met", "met"),
    IMPOSSIBLE("not every must and limit can be met", "not all can be met"),
    NOT_SETTLED(
            "not every must and limit is met, and whether they can be is not settled in the time",
            "whether they can be is not settled in the time");

    private final String words;
    private final String shortWords;

    Verdict(String words, String shortWords) {
        this.words = words;
        this.shortWords = shortWords;
    }

    /** A few words, after what is not met. */
    public String inShort() {
        return shortWords;
    }

    public String inWords() {
        return words;
    }

    /** The words with a capital, as they start a sentence. */
    public String sentence() {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
