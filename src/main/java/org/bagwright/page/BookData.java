package org.bagwright.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.MeasureUnit;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.units.LengthUnit;

/** What the page needs of a planned book. Distances are in metres; the page shows them in the book's unit. */
record BookData(BookResult result) {
    ObjectNode node() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        BookSettings settings = result.book().settings();
        node.put("title", settings.title().orElse(""));
        LengthUnit distance = settings.units().distance();
        node.put("distance", distance.label()).put("mPer", distance.toM(1));
        node.put("mostClubs", BagOptions.MOST_CLUBS);
        node.put("proven", result.proven()).put("boundPoints", result.boundPoints());
        node.put("verdict", result.verdict().sentence());
        node.put("met", result.plannedBreaks() == 0);
        Aims aims = result.bags().get(0).options().aims();
        measures(node.putArray("measures"), aims, settings);
        limits(node.putArray("limits"), aims);
        ArrayNode sleeves = node.putArray("sleeves");
        result.book().sleeves().forEach(sleeve -> sleeves.add(sleeve(sleeve)));
        ArrayNode stock = node.putArray("stock");
        result.stock().forEach(item -> stock(stock.addObject(), item));
        ArrayNode golfers = node.putArray("golfers");
        result.bags().forEach(bag -> golfers.add(new GolferData(result, bag).node()));
        return node;
    }

    private static void measures(ArrayNode measures, Aims aims, BookSettings settings) {
        for (Measure measure : Measure.values()) {
            Aim aim = aims.of(measure);
            measures.addObject()
                    .put("name", measure.label())
                    .put("scope", measure.scope().name())
                    .put("unit", measure.unit().label(settings))
                    .put("distance", measure.unit() == MeasureUnit.DISTANCE)
                    .put("tolerance", aim.toleranceMeasureUnits())
                    .put("importance", aim.importancePoints())
                    .put("must", aim.isHard())
                    .put("likely", aim.onWhatIsLikely());
        }
    }

    private static void limits(ArrayNode limits, Aims aims) {
        for (LimitKind kind : LimitKind.values()) {
            limits.addObject()
                    .put("name", kind.label())
                    .put("quantity", kind.quantity().label())
                    .put("least", kind.isLeast())
                    .put("tolerance", aims.limitToleranceMeasureUnits(kind.quantity()));
        }
    }

    private static ObjectNode sleeve(Sleeve sleeve) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("name", sleeve.name());
        ArrayNode marks = node.putArray("marks");
        ArrayNode hours = node.putArray("hours");
        for (SleeveSetting setting : sleeve.settings()) {
            marks.add(setting.mark());
            if (hasPlace(setting)) {
                hours.add(setting.rings().get(0).clockH() % 12);
            }
        }
        long places = sleeve.settings().stream()
                .filter(BookData::hasPlace)
                .map(setting -> setting.rings().get(0).clockH() % 12)
                .distinct()
                .count();
        node.put("round", places == sleeve.settings().size());
        return node;
    }

    /** Whether the mark has a place of its own on the clock face. */
    private static boolean hasPlace(SleeveSetting setting) {
        return setting.rings().size() == 1 && setting.rings().get(0).bendDeg() > 0;
    }

    private static void stock(ObjectNode node, StockLimit limit) {
        node.put("item", limit.item().inWords());
        node.put("available", limit.available());
        node.put("cell", limit.item().cell());
    }
}
