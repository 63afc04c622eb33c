package org.bagwright.domain.text;

import java.util.Collection;
import java.util.List;

/** Puts lists into sentences. */
public final class ListText {
    private ListText() {}

    /** {@code a, b or c}. */
    public static String oneOf(Collection<String> words) {
        return joined(words, " or ");
    }

    /** {@code a, b and c}. */
    public static String allOf(Collection<String> words) {
        return joined(words, " and ");
    }

    private static String joined(Collection<String> words, String beforeLast) {
        List<String> list = List.copyOf(words);
        if (list.size() < 2) {
            return String.join("", list);
        }
        int last = list.size() - 1;
        return String.join(", ", list.subList(0, last)) + beforeLast + list.get(last);
    }

    /** {@code "a", "b" or "c"}. */
    public static String quotedOneOf(Collection<String> words) {
        return oneOf(words.stream().map(word -> '"' + word + '"').toList());
    }
}
