package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.List;

/**
 * A text for a terminal of {@link #COLUMNS} columns.
 *
 * @param text one line, of any length
 * @param hangingChars how far every line but the first is indented
 */
record WrappedText(String text, int hangingChars) {
    static final int COLUMNS = 100;

    /** The text in lines that fit; a word that is too long by itself stays whole. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        String rest = text;
        while (rest.length() > COLUMNS) {
            int end = rest.lastIndexOf(' ', COLUMNS);
            if (rest.substring(0, Math.max(end, 0)).isBlank()) {
                break;
            }
            lines.add(rest.substring(0, end).stripTrailing());
            rest = " ".repeat(hangingChars) + rest.substring(end + 1);
        }
        lines.add(rest);
        return lines;
    }

    /** At most so many of its lines, with dots where that is not all. */
    List<String> lines(int most) {
        List<String> all = lines();
        if (all.size() <= most) {
            return all;
        }
        List<String> first = new ArrayList<>(all.subList(0, most));
        String last = first.get(most - 1);
        first.set(most - 1, last.substring(0, Math.min(last.length(), COLUMNS - 4)) + " ...");
        return first;
    }

    /** A name cut to a width, with a sign where something is missing. */
    static String shortened(String text, int chars) {
        return text.length() <= chars ? text : text.substring(0, chars - 1) + "~";
    }
}
