package org.bagwright.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Hand;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.PieceMoves;
import org.bagwright.domain.club.SleeveTurn;
import org.bagwright.domain.club.StatedLimit;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ClubWishes;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;

/**
 * What the page needs of one club that may fill a slot.
 *
 * @param book the book
 * @param bag the bag that has the slot
 * @param slot the slot
 * @param place the club's place among those of the slot
 */
record ClubData(Book book, BagOptions bag, SlotOptions slot, int place) {
    Club club() {
        return slot.clubs().get(place);
    }

    private List<Option> options() {
        return slot.optionsOf(club());
    }

    private <T> List<T> different(Function<Choice, T> part) {
        return options().stream().map(Option::choice).map(part).distinct().toList();
    }

    /** The marks of its settings; {@link Choice#FIXED} alone for a glued shaft. */
    List<String> settings() {
        return different(Choice::settingText);
    }

    /** Its weightings; {@link Choice#NO_KIT} alone without a kit. */
    List<String> weightings() {
        return different(Choice::weightingText);
    }

    ObjectNode node() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("name", club().name()).put("kind", club().kind().label());
        node.put("cell", club().cell());
        club().sleeve()
                .flatMap(book::sleeve)
                .ifPresent(sleeve -> node.put("sleeve", book.sleeves().indexOf(sleeve)));
        put(node.putArray("settings"), settings());
        put(node.putArray("weightings"), weightings());
        put(node.putArray("turns"), settings().stream().map(this::turn).toList());
        put(node.putArray("moves"), weightings().stream().map(this::moves).toList());
        slot.todayOf(club()).ifPresent(today -> node.put("today", slot.options().indexOf(today)));
        options().stream().findFirst().flatMap(Option::setup).ifPresent(setup -> wishes(node, setup.wishes()));
        return node;
    }

    private static void put(ArrayNode array, List<String> texts) {
        texts.forEach(array::add);
    }

    /** How the sleeve is turned from today's setting, in words; empty where that is not known. */
    private String turn(String setting) {
        boolean leftHanded = bag.golfer().hand() == Hand.LEFT;
        String today = club().today().settingText();
        return book.sleeveOf(club())
                .filter(sleeve -> !setting.equalsIgnoreCase(today))
                .map(sleeve -> SleeveTurn.inWords(sleeve, leftHanded, today, setting))
                .orElse("");
    }

    /** Which pieces are moved from today's weighting, in words. */
    private String moves(String weighting) {
        return String.join("; ", new PieceMoves(called(club().today().weightingText()), called(weighting)).byPort());
    }

    private Optional<Weighting> called(String weighting) {
        return book.kitOf(club()).flatMap(kit -> kit.weighting(weighting));
    }

    private static void wishes(ObjectNode node, ClubWishes wishes) {
        ArrayNode limits = node.putArray("limits");
        for (StatedLimit limit : wishes.limits().all()) {
            limits.addObject()
                    .put("kind", limit.kind().ordinal())
                    .put("value", limit.valueMeasureUnits())
                    .put("cell", limit.cell());
        }
        ObjectNode wanted = node.putObject("wanted");
        for (Measure measure : Measure.values()) {
            wishes.of(measure).ifPresent(range -> {
                ArrayNode ends = wanted.putArray(measure.label());
                end(ends, range.leastMeasureUnits());
                end(ends, range.mostMeasureUnits());
            });
        }
    }

    private static void end(ArrayNode ends, double value) {
        if (Double.isFinite(value)) {
            ends.add(value);
        } else {
            ends.addNull();
        }
    }
}
