package org.bagwright.domain.book;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Checks;

/**
 * A kind of piece of which only a limited number is on the bench, in addition to those in the clubs today.
 *
 * @param kind what it is
 * @param name the kit of a piece, or the sleeve, or the head by its club's name; empty for a piece of any kit
 * @param massKg mass of a piece, kilograms; empty for sleeves and heads
 * @param count how many are on the bench
 * @param cell where the book says so
 */
public record StockItem(Kind kind, Optional<String> name, OptionalDouble massKg, int count, String cell) {

    private static final double SAME_MASS_KG = 5e-6;

    /** What is on the bench. */
    public enum Kind {
        PIECE,
        SLEEVE,
        HEAD
    }

    public StockItem {
        Checks.that(massKg.isPresent() == (kind == Kind.PIECE), "a piece, and only a piece, has a mass");
        Checks.that(kind == Kind.PIECE || name.isPresent(), "a sleeve or a head needs a name");
        massKg.ifPresent(value -> Checks.positive(value, "mass of a piece"));
        Checks.that(count >= 0, "a count must be 0 or more");
    }

    /** How many of this item a club with this weighting uses. */
    public int takenBy(Club club, Optional<Weighting> weighting) {
        return switch (kind) {
            case PIECE -> pieces(club, weighting);
            case SLEEVE -> isNamed(club.sleeve()) ? 1 : 0;
            case HEAD -> isNamed(Optional.of(club.name())) ? 1 : 0;
        };
    }

    private int pieces(Club club, Optional<Weighting> weighting) {
        if (weighting.isEmpty() || (name.isPresent() && !isNamed(club.kit()))) {
            return 0;
        }
        return (int) weighting.get().pieces().stream()
                .filter(piece -> Math.abs(piece.massKg() - massKg.orElseThrow()) < SAME_MASS_KG)
                .count();
    }

    private boolean isNamed(Optional<String> other) {
        return other.isPresent() && name.isPresent() && other.get().equalsIgnoreCase(name.get());
    }

    /** The item as people say it, such as {@code 12 g pieces of kit Front} or {@code sleeve S1}. */
    public String inWords() {
        return switch (kind) {
            case PIECE ->
                Numbers.trimmed(massKg.orElseThrow() * 1000) + " g pieces"
                        + name.map(kit -> " of " + titled("kit", kit)).orElse("");
            case SLEEVE -> titled("sleeve", name.orElseThrow());
            case HEAD -> titled("head", name.orElseThrow());
        };
    }

    /** A name with the word for what it names before it, unless the name has that word itself. */
    public static String titled(String word, String name) {
        return name.toLowerCase(Locale.ROOT).contains(word) ? name : word + " " + name;
    }
}
