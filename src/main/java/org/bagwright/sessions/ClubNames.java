package org.bagwright.sessions;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.text.CloseNames;

/** The clubs of one golfer by their names and by short names that are unmistakable among them. */
final class ClubNames {
    private final String golfer;
    private final List<Club> clubs;
    private final Map<String, Optional<Club>> known = new HashMap<>();

    ClubNames(String golfer, List<Club> clubs) {
        this.golfer = golfer;
        this.clubs = List.copyOf(clubs);
    }

    /** The club that a text names; empty where none or more than one may be meant. */
    Optional<Club> find(String text) {
        return known.computeIfAbsent(CloseNames.key(text), key -> byName(key).or(() -> byShortName(key)));
    }

    private Optional<Club> byName(String key) {
        return only(club -> CloseNames.key(club.name()).equals(key))
                .or(() -> only(club -> letters(club.name()).equals(letters(key))));
    }

    private Optional<Club> byShortName(String key) {
        if (clubs.stream().anyMatch(club -> letters(club.name()).equals(letters(key)))) {
            return Optional.empty();
        }
        return ClubText.of(key).flatMap(meant -> only(club ->
                        ClubText.of(club.name()).filter(meant::equals).isPresent())
                .or(() -> alike(meant)));
    }

    /** A club that has another name, and of which alone the kind and the number, or the usual loft, fit. */
    private Optional<Club> alike(ClubText meant) {
        if (meant.wedge().isPresent()) {
            return only(club -> isWedge(club)
                    && meant.wedge().get().isUsual(club.head().loftDeg())
                    && ClubText.of(club.name()).flatMap(ClubText::wedge).isEmpty());
        }
        ClubKind kind = meant.kind().orElseThrow();
        if (meant.number().isEmpty()) {
            return only(club -> club.kind() == kind);
        }
        int number = meant.number().getAsInt();
        return only(club -> club.kind() == kind && ClubText.parts(club.name()).contains(String.valueOf(number)))
                .or(() -> only(club -> kind == ClubKind.WEDGE
                        && isWedge(club)
                        && Math.round(club.head().loftDeg()) == number
                        && ClubText.of(club.name()).flatMap(ClubText::wedge).isPresent()));
    }

    private static boolean isWedge(Club club) {
        return club.kind() == ClubKind.WEDGE || club.kind() == ClubKind.IRON;
    }

    private Optional<Club> only(Predicate<Club> fits) {
        List<Club> found = clubs.stream().filter(fits).toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static String letters(String name) {
        return CloseNames.key(name).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    /** Why no club was found, with the name that may be meant. */
    String notFound(String text) {
        List<String> names = clubs.stream().map(Club::name).toList();
        boolean twice = clubs.stream()
                        .filter(club -> letters(club.name()).equals(letters(text)))
                        .count()
                > 1;
        return twice
                ? golfer + " has two clubs " + ShotCell.quoted(text) + "; expected one."
                : golfer + " has no club " + ShotCell.quoted(text) + "." + CloseNames.maybe(text, names);
    }
}
