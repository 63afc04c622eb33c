package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.bagwright.cli.text.MessageText;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ChartedBook;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.units.Units;

/** The machine-readable documents; their field names are fixed. Distances and speeds are in the book's units. */
public final class Json {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Json() {}

    public static String text(ObjectNode document) {
        return document.toPrettyString();
    }

    public static ObjectNode check(List<Message> messages) {
        ObjectNode document = NODES.objectNode();
        ArrayNode problems = document.putArray("problems");
        ArrayNode notes = document.putArray("notes");
        List<Message> toMend = MessageText.toMend(messages);
        for (Message message : messages) {
            (toMend.contains(message) ? problems : notes).add(message(message));
        }
        return document;
    }

    public static ObjectNode chart(ChartedBook charted) {
        Units units = charted.book().settings().units();
        ObjectNode document = NODES.objectNode();
        document.set("units", units(units));
        ArrayNode clubs = document.putArray("clubs");
        for (BagOptions bag : charted.bags()) {
            for (SlotOptions slot : bag.slots()) {
                slot.clubs().forEach(club -> clubs.add(club(slot, club, units)));
            }
        }
        document.set("messages", messages(charted.messages()));
        return document;
    }

    public static ObjectNode plan(BookResult result) {
        Units units = result.book().settings().units();
        ObjectNode document = NODES.objectNode();
        document.set("units", units(units));
        document.put("penalty", result.plannedPoints());
        document.put("bound", result.boundPoints());
        document.put("proven", result.proven());
        document.put("brokenMusts", result.plannedBreaks());
        ObjectNode today = document.putObject("today");
        today.put("penalty", result.todayPoints());
        today.put("brokenMusts", result.todayBreaks());
        document.put("seed", result.seed());
        document.put("seconds", result.searchS());
        ArrayNode golfers = document.putArray("golfers");
        result.bags().forEach(bag -> golfers.add(golfer(bag, units)));
        ExplanationJson.put(document, result, Json::choices);
        document.set("messages", messages(result.messages()));
        return document;
    }

    static ObjectNode units(Units units) {
        ObjectNode node = NODES.objectNode();
        node.put("distance", units.distance().label());
        node.put("speed", units.speed().label());
        node.put("length", units.length().label());
        return node;
    }

    static ArrayNode messages(List<Message> messages) {
        ArrayNode array = NODES.arrayNode();
        messages.forEach(message -> array.add(message(message)));
        return array;
    }

    private static ObjectNode message(Message message) {
        ObjectNode node = NODES.objectNode();
        node.put("cell", message.cell());
        node.put("severity", message.severity().name().toLowerCase(Locale.ROOT));
        node.put("text", message.text());
        return node;
    }

    private static ObjectNode club(SlotOptions slot, Club club, Units units) {
        ObjectNode node = NODES.objectNode();
        node.put("golfer", club.golfer());
        node.put("slot", club.slot());
        node.put("club", club.name());
        node.put("kind", club.kind().label());
        node.put("inBag", club.inBag());
        node.put("slotMayBeEmpty", slot.options().stream().anyMatch(Option::isEmpty));
        node.put("today", slot.today().key());
        ArrayNode options = node.putArray("options");
        slot.optionsOf(club).forEach(option -> options.add(option(option, units)));
        return node;
    }

    private static ObjectNode option(Option option, Units units) {
        ObjectNode node = NODES.objectNode();
        node.put("option", option.key());
        node.put("setting", option.choice().settingText());
        node.put("weighting", option.choice().weighting().orElse(null));
        node.put("loftBend", option.choice().bend().loftDeg());
        node.put("lieBend", option.choice().bend().lieDeg());
        node.put("gaugeLoftDeg", option.pose().gaugeLoftDeg());
        node.put("gaugeLieDeg", option.pose().gaugeLieDeg());
        node.put("addressLoftDeg", option.pose().addressLoftDeg());
        node.put("faceHeadingDeg", option.pose().faceHeadingDeg());
        node.put("deliveredFaceClosedDeg", option.setup().orElseThrow().deliveredFaceDeg());
        node.put("soleTiltDeg", option.pose().soleTiltDeg());
        node.put("toeGapMm", option.pose().toeGapMm());
        node.put("sitsClosedDeg", option.pose().sitsClosedDeg());
        node.put("loftAsItSitsDeg", option.pose().loftAsItSitsDeg());
        node.put("contactShiftMm", option.pose().contactShiftMm());
        node.put("contactShiftToToeMm", option.pose().contactShiftToToeMm());
        node.put("shaftTurnDeg", option.pose().shaftTurnDeg());
        option.shot().ifPresent(shot -> {
            node.put("launchDeg", shot.launchDeg());
            node.put("spinRpm", shot.spinRpm());
            node.put("ballSpeed", units.speed().fromMps(shot.ballSpeedMps()));
            node.put("carry", units.distance().fromM(shot.carryM()));
            node.put("landingDeg", shot.landingDeg());
            node.put("startClosedDeg", shot.startClosedDeg());
            node.put("sidewaysClosed", units.distance().fromM(shot.sidewaysClosedM()));
        });
        node.put("swingweightPoints", option.build().swingweight().scalePoints());
        node.put("swingweight", option.build().swingweight().text());
        node.put("totalMassG", option.build().totalMassKg() * 1000);
        node.put("headMassG", option.build().headMassKg() * 1000);
        node.put("clubInertiaKgCm2", option.build().clubInertiaKgCm2());
        node.put("headInertiaGCm2", option.build().headInertiaKgM2() * 1e7);
        node.put("balancePointMm", option.build().balancePointM() * 1000);
        node.put("changes", option.changes());
        node.put("ownPenalty", option.terms().totalPoints());
        node.put("open", option.open());
        return node;
    }

    private static ObjectNode golfer(BagResult bag, Units units) {
        ObjectNode node = NODES.objectNode();
        node.put("golfer", bag.golfer().name());
        node.put("penalty", bag.planned().score().penaltyPoints());
        node.put("brokenMusts", bag.planned().score().hardBreaks());
        ObjectNode today = node.putObject("today");
        today.put("penalty", bag.today().score().penaltyPoints());
        today.put("brokenMusts", bag.today().score().hardBreaks());
        today.set("gaps", gaps(bag, bag.today(), units));
        node.set("choices", choices(bag, bag.planned()));
        node.set("gaps", gaps(bag, bag.planned(), units));
        new OutlookJson(units).put(node, bag);
        return node;
    }

    private static ArrayNode choices(BagResult bag, BagState state) {
        ArrayNode choices = NODES.arrayNode();
        List<Option> options = bag.optionsOf(state);
        for (int index : IntStream.range(0, options.size()).toArray()) {
            ObjectNode choice = choices.addObject();
            choice.put("slot", bag.options().slots().get(index).slot());
            choice.put("club", options.get(index).clubText());
            choice.put("option", options.get(index).key());
            choice.put("changes", options.get(index).changes());
            choice.set("penalty", penalty(options.get(index), state, index));
        }
        return choices;
    }

    /** What a club costs by measure, and the musts that it breaks by itself; gaps have their own cost with them. */
    private static ObjectNode penalty(Option option, BagState state, int index) {
        Terms terms = option.terms().plus(state.termsWithOthers(index));
        ObjectNode node = NODES.objectNode();
        for (Measure measure : Measure.values()) {
            if (measure.scope() != Measure.Scope.NEIGHBOURS) {
                node.put(measure.label(), terms.points(measure));
            }
        }
        node.put("brokenMusts", option.terms().totalBreaks());
        return node;
    }

    private static ArrayNode gaps(BagResult bag, BagState state, Units units) {
        ArrayNode gaps = NODES.arrayNode();
        List<Option> options = bag.optionsOf(state);
        for (GapTerm term : state.gaps()) {
            ObjectNode gap = gaps.addObject();
            gap.put("from", options.get(term.fromIndex()).clubText());
            gap.put("to", options.get(term.toIndex()).clubText());
            gap.put("gap", units.distance().fromM(term.gapM()));
            gap.put("wish", units.distance().fromM(term.wishM()));
            gap.put("penalty", term.penaltyPoints());
        }
        return gaps;
    }
}
