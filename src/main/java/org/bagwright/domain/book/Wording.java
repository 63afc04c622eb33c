package org.bagwright.domain.book;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Stream;
import org.bagwright.domain.text.ListText;
import org.bagwright.domain.units.Checks;

/**
 * The words of a message: what is said once of its cause, and what is said of each place that shares it.
 *
 * @param lead the words before the places
 * @param places what is said of each place; empty where all is said in the lead
 * @param tail the words after the places
 */
public record Wording(String lead, List<Place> places, String tail) {
    private static final int MOST_PLACES = 8;

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
        boolean severalGolfers = places.stream().map(Place::golfer).distinct().count() > 1;
        int shown = places.size() > MOST_PLACES + 1 ? MOST_PLACES : places.size();
        List<String> names = new ArrayList<>();
        places.subList(0, shown).forEach(place -> names.add(place.text(severalGolfers)));
        if (shown < places.size()) {
            names.add((places.size() - shown) + " more");
        }
        return lead + ListText.allOf(names) + tail;
    }
}
