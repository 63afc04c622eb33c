package org.bagwright.sessions;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bagwright.domain.text.CloseNames;

/**
 * A heading of a file.
 *
 * @param text the heading as the file has it
 */
record HeadingText(String text) {
    private static final Pattern BRACKETS = Pattern.compile("[\\[(]([^\\])]*)[\\])]");
    private static final Pattern LAST_WORD = Pattern.compile("(.+?)[\\s,;:_-]+([\\p{L}\u00b0\u00ba/]+\\.?)");
    private static final Set<String> RIGHT_POSITIVE =
            Set.of("r+", "+r", "right+", "+right", "l-/r+", "l-r+", "-l/+r", "-l+r", "r+/l-", "+r/-l", "left-/right+");
    private static final Map<String, String> SPELLINGS = Map.ofEntries(
            Map.entry("velocity", "speed"),
            Map.entry("clubhead", "head"),
            Map.entry("ang", "angle"),
            Map.entry("descent", "landing"),
            Map.entry("dist", "distance"),
            Map.entry("players", "player"),
            Map.entry("yardage", "distance"));

    /** Its words without brackets, each in one spelling and in no order. */
    Set<String> words() {
        return words(withoutBrackets());
    }

    /** The same heading without its last word, where that may be a unit. */
    HeadingText withoutLastWord() {
        Matcher matcher = LAST_WORD.matcher(withoutBrackets().strip());
        return matcher.matches() ? new HeadingText(matcher.group(1)) : this;
    }

    /** Its last word, where that may be a unit; else empty. */
    String lastWord() {
        Matcher matcher = LAST_WORD.matcher(withoutBrackets().strip());
        return matcher.matches() ? matcher.group(2) : "";
    }

    /** What its brackets hold that is more than the side that is positive. */
    List<String> inBrackets() {
        return BRACKETS.matcher(text)
                .results()
                .map(found -> found.group(1).strip())
                .filter(found ->
                        !RIGHT_POSITIVE.contains(found.toLowerCase(Locale.ROOT).replaceAll("\\s", "")))
                .toList();
    }

    /** What two headings have in common that a person calls the same; no sign that separates what a book remembers. */
    String key() {
        return CloseNames.key(text.replaceAll("[;=]", " "));
    }

    private String withoutBrackets() {
        return BRACKETS.matcher(text).replaceAll((MatchResult found) -> " ");
    }

    private static Set<String> words(String heading) {
        String apart = Normalizer.normalize(heading, Normalizer.Form.NFKC)
                .replaceAll("(?<=\\p{Ll})(?=\\p{Lu}\\p{Ll})", " ")
                .toLowerCase(Locale.ROOT)
                .replaceAll("(?<!\\p{L})(club)[\\s_-]+(head)(?!\\p{L})", "$1$2")
                .replaceAll("(?<!\\p{L})(back)[\\s_-]+(spin)(?!\\p{L})", "$1$2")
                .replaceAll("(?<!\\p{L})(off)[\\s_-]+(line)(?!\\p{L})", "$1$2");
        return Stream.of(apart)
                .flatMap(words -> Arrays.stream(words.split("[^\\p{L}\\p{N}]+")))
                .filter(word -> !word.isEmpty())
                .map(word -> SPELLINGS.getOrDefault(word, word))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
