package org.bagwright.sessions;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.bagwright.domain.club.ClubKind;

/**
 * What a short name of a club means: a kind, with the number on its sole or its loft, or one of the lettered wedges. The
 * lofts of these are common practice, without a source.
 *
 * @param kind its kind; empty for a number alone and for a lettered wedge
 * @param number the number on its sole, or the loft of a wedge
 * @param wedge which lettered wedge
 */
record ClubText(Optional<ClubKind> kind, OptionalInt number, Optional<Lettered> wedge) {
    private static final int LEAST_WEDGE_LOFT_DEG = 44;
    private static final int MOST_WEDGE_LOFT_DEG = 66;
    private static final int MOST_NUMBER = 14;

    /** A wedge that is known by its use, with the lofts from which and below which it is usual, degrees. */
    enum Lettered {
        PITCHING(41, 48),
        GAP(48, 54),
        SAND(54, 58),
        LOB(58, 67);

        private final double fromDeg;
        private final double belowDeg;

        Lettered(double fromDeg, double belowDeg) {
            this.fromDeg = fromDeg;
            this.belowDeg = belowDeg;
        }

        boolean isUsual(double loftDeg) {
            return loftDeg >= fromDeg && loftDeg < belowDeg;
        }
    }

    private static final Map<String, ClubKind> KINDS = Map.ofEntries(
            Map.entry("driver", ClubKind.DRIVER),
            Map.entry("dr", ClubKind.DRIVER),
            Map.entry("drv", ClubKind.DRIVER),
            Map.entry("wood", ClubKind.WOOD),
            Map.entry("w", ClubKind.WOOD),
            Map.entry("wd", ClubKind.WOOD),
            Map.entry("fw", ClubKind.WOOD),
            Map.entry("fairway", ClubKind.WOOD),
            Map.entry("fairway wood", ClubKind.WOOD),
            Map.entry("hybrid", ClubKind.HYBRID),
            Map.entry("h", ClubKind.HYBRID),
            Map.entry("hy", ClubKind.HYBRID),
            Map.entry("hyb", ClubKind.HYBRID),
            Map.entry("rescue", ClubKind.HYBRID),
            Map.entry("iron", ClubKind.IRON),
            Map.entry("i", ClubKind.IRON),
            Map.entry("ir", ClubKind.IRON),
            Map.entry("wedge", ClubKind.WEDGE),
            Map.entry("putter", ClubKind.PUTTER),
            Map.entry("pt", ClubKind.PUTTER));
    private static final Map<String, Lettered> WEDGES = Map.ofEntries(
            Map.entry("pw", Lettered.PITCHING),
            Map.entry("pitching wedge", Lettered.PITCHING),
            Map.entry("gw", Lettered.GAP),
            Map.entry("aw", Lettered.GAP),
            Map.entry("gap wedge", Lettered.GAP),
            Map.entry("approach wedge", Lettered.GAP),
            Map.entry("sw", Lettered.SAND),
            Map.entry("sand wedge", Lettered.SAND),
            Map.entry("lw", Lettered.LOB),
            Map.entry("lob wedge", Lettered.LOB));

    /** What a text means; empty where it is no short name that is known. */
    static Optional<ClubText> of(String text) {
        List<String> parts = parts(text);
        List<String> numbers =
                parts.stream().filter(part -> part.matches("\\d+")).toList();
        String letters = String.join(
                " ", parts.stream().filter(part -> !part.matches("\\d+")).toList());
        if (numbers.size() > 1 || numbers.stream().anyMatch(number -> number.length() > 2)) {
            return Optional.empty();
        }
        OptionalInt number = numbers.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(numbers.get(0)));
        if (number.isEmpty() && WEDGES.containsKey(letters)) {
            return Optional.of(new ClubText(Optional.empty(), number, Optional.of(WEDGES.get(letters))));
        }
        if (letters.isEmpty()) {
            return number.isPresent() && isWedgeLoft(number.getAsInt())
                    ? Optional.of(new ClubText(Optional.of(ClubKind.WEDGE), number, Optional.empty()))
                    : Optional.empty();
        }
        return Optional.ofNullable(KINDS.get(letters)).flatMap(kind -> of(kind, number));
    }

    private static Optional<ClubText> of(ClubKind kind, OptionalInt number) {
        boolean single = kind == ClubKind.DRIVER || kind == ClubKind.PUTTER;
        if (kind == ClubKind.WOOD && number.equals(OptionalInt.of(1))) {
            return of(ClubKind.DRIVER, OptionalInt.empty());
        }
        boolean fits = kind == ClubKind.WEDGE
                ? number.isPresent() && isWedgeLoft(number.getAsInt())
                : single
                        ? number.isEmpty() || number.getAsInt() == 1
                        : number.isPresent() && number.getAsInt() <= MOST_NUMBER;
        return fits
                ? Optional.of(new ClubText(Optional.of(kind), single ? OptionalInt.empty() : number, Optional.empty()))
                : Optional.empty();
    }

    private static boolean isWedgeLoft(int number) {
        return number >= LEAST_WEDGE_LOFT_DEG && number <= MOST_WEDGE_LOFT_DEG;
    }

    /** The words and numbers of a name; {@code 7i} has two. */
    static List<String> parts(String name) {
        return Arrays.stream(name.toLowerCase(Locale.ROOT)
                        .replaceAll("[\u00b0\u00ba]|\\bdeg(rees?)?\\b", " ")
                        .replaceAll("(?<=\\d)(?=\\p{L})|(?<=\\p{L})(?=\\d)", " ")
                        .replaceAll("(?<=\\d) (st|nd|rd|th)\\b", "")
                        .split("[^\\p{L}\\p{N}.]+"))
                .map(part -> part.replaceAll("\\.$", ""))
                .filter(part -> !part.isEmpty())
                .toList();
    }
}
