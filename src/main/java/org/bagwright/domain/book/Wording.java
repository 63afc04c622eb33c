package org.bagwright.domain.book;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bagwright.domain.text.ListText;
import org.bagwright.domain.units.Checks;

/**
 * The words of a message: about its cause, once, and about each place that shares it.
 *
 * @param lead the words before the places
 * @param places the words about each place; empty where the lead says all
 * @param tail the words after the places
 */
public record Wording(String lead, List<Place> places, String tail) {
    private static final int MOST_PLACES = 8;
    private static final int MOST_CHARS = 250;

    /**
     * A place that shares a cause.
     *
     * @param golfer whose it is; empty where the name says that
     * @param name such as the name of a club
     * @param detail what holds for this place, if anything
     */
    public record Place(String golfer, String name, String detail) {
        private String text(boolean severalGolfers) {
            String whose = severalGolfers && !golfer.isEmpty() ? name + " of " + golfer : name;
            return detail.isEmpty() ? whose : whose + " (" + detail + ")";
        }
    }

    public Wording {
        places = List.copyOf(places);
        Checks.named(lead + tail, "text");
    }

    /** Words of which nothing depends on the place. */
    public static Wording plain(String text) {
        return new Wording(text, List.of(), "");
    }

    /** Words about one golfer. */
    public static Wording ofGolfer(String lead, String golfer, String detail, String tail) {
        return new Wording(lead, List.of(new Place("", golfer, detail)), tail);
    }

    /** Words about one club of a golfer. */
    public static Wording ofClub(String lead, String golfer, String club, String detail, String tail) {
        return new Wording(lead, List.of(new Place(golfer, club, detail)), tail);
    }

    /** Whether these words name the same cause as others do. */
    boolean sharesCauseWith(Wording other) {
        return lead.equals(other.lead) && tail.equals(other.tail);
    }

    /** The same words, with the places of others of this cause too. */
    Wording with(Wording other) {
        return new Wording(
                lead,
                List.copyOf(new LinkedHashSet<>(
                        Stream.concat(places.stream(), other.places.stream()).toList())),
                tail);
    }

    /** The whole as one line; of many places the first few are named and the others counted. */
    public String text() {
        List<String> golfers = places.stream().map(Place::golfer).distinct().toList();
        boolean severalGolfers = golfers.size() > 1;
        List<String> names = new ArrayList<>(
                places.stream().map(place -> place.text(severalGolfers)).toList());
        int shown = shown(names);
        if (shown < names.size()) {
            names.subList(shown, names.size()).clear();
            names.add((places.size() - shown) + " more" + (severalGolfers ? counted(golfers) : ""));
        }
        return lead + ListText.allOf(names) + tail;
    }

    private static int shown(List<String> names) {
        int shown = 0;
        int chars = 0;
        while (shown < Math.min(MOST_PLACES, names.size()) && (shown == 0 || chars < MOST_CHARS)) {
            chars += names.get(shown).length();
            shown++;
        }
        return shown == names.size() - 1 ? names.size() : shown;
    }

    /** How many of the places are each golfer's. */
    private String counted(List<String> golfers) {
        return golfers.stream()
                .filter(golfer -> !golfer.isEmpty())
                .map(golfer -> golfer + " "
                        + places.stream()
                                .filter(place -> place.golfer().equals(golfer))
                                .count())
                .collect(Collectors.joining(", ", " (in all ", ")"));
    }
}
