package org.bagwright.workbook.schema;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A heading as its words, so that {@code Gap least}, {@code min. gap} and {@code Minimum_Gaps} are one and the same: without
 * letter case, plural, order, and words that say nothing more.
 *
 * @param words what is left, each in one spelling
 */
record HeadingWords(Set<String> words) {
    /** Words of the trade at large that mean the same. */
    private static final Map<String, String> SPELLINGS = Map.ofEntries(
            Map.entry("min", "least"),
            Map.entry("minimum", "least"),
            Map.entry("smallest", "least"),
            Map.entry("lowest", "least"),
            Map.entry("max", "most"),
            Map.entry("maximum", "most"),
            Map.entry("largest", "most"),
            Map.entry("greatest", "most"),
            Map.entry("highest", "most"),
            Map.entry("goal", "target"),
            Map.entry("wish", "target"),
            Map.entry("wanted", "target"),
            Map.entry("desired", "target"),
            Map.entry("weight", "mass"),
            Map.entry("wt", "mass"),
            Map.entry("velocity", "speed"),
            Map.entry("backspin", "spin"),
            Map.entry("clubhead", "head"),
            Map.entry("descent", "landing"),
            Map.entry("player", "golfer"),
            Map.entry("adapter", "sleeve"),
            Map.entry("adaptor", "sleeve"),
            Map.entry("delta", "change"),
            Map.entry("adjustment", "change"),
            Map.entry("moi", "inertia"),
            Map.entry("cog", "cg"));

    /** Words left out where others remain. */
    private static final Set<String> SAYING_NOTHING =
            Set.of("of", "the", "angle", "rate", "distance", "avg", "average", "name", "today", "current", "actual");

    HeadingWords {
        words = Set.copyOf(words);
    }

    static HeadingWords of(String heading) {
        String apart = Normalizer.normalize(heading, Normalizer.Form.NFKC)
                .replaceAll("(?<=\\p{Ll})(?=\\p{Lu}\\p{Ll})", " ")
                .toLowerCase(Locale.ROOT)
                .replaceAll("['\u2019]", "")
                .replaceAll("cent(er|re) of gravity", "cg")
                .replaceAll("moment of inertia", "inertia")
                .replaceAll("(swing|back|side|top)[\\s_-]+(weight|wt|spin)\\b", "$1$2");
        Set<String> all = Arrays.stream(apart.split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .map(HeadingWords::spelt)
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> telling = new TreeSet<>(all);
        telling.removeAll(SAYING_NOTHING);
        return new HeadingWords(telling.isEmpty() ? all : telling);
    }

    private static String spelt(String word) {
        String single = SheetSchema.singular(word);
        return SPELLINGS.getOrDefault(single, single);
    }

    /** The share of words that two headings have in common, 0 to 1. */
    double likeness(HeadingWords other) {
        long common = words.stream().filter(other.words::contains).count();
        return common / (double) (words.size() + other.words.size() - common);
    }
}
