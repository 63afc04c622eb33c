package org.bagwright.domain.compare;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.bagwright.domain.book.GapWish;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.Limits;
import org.bagwright.domain.compare.ComparedField.Value;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.Swingweight;
import org.bagwright.domain.units.Units;

/**
 * Everything that records of a book say, a line for each component, so that none can differ unseen. Labels and units follow
 * from the names of components, which end in their unit.
 */
final class RecordFields {
    private static final String CLUB_LENGTHS = "lengthM|shaftBalanceM|lengthLimitM";
    private static final String NOT_COMPARED = "name|golfer|title|units|shotHeadings|.*[cC]ells?";
    private static final Map<String, String> LABELS_IN = Map.of(
            "Targets", "%s target",
            "Bend", "%s bend",
            "BendRange", "bend %s",
            "HeadSpeeds", "%s speed",
            "HeadForm", "head %s",
            "GapAims", "gap %s",
            "Matching", "match %s");
    private static final Map<String, String> LABELS = Map.of(
            "Targets.gapWishM", "gap wish",
            "Targets.golferLieDeg", "golfer lie",
            "ClubParts.measured", "swingweight read",
            "Freedom.allowed", "allowed settings");

    private final Units units;
    private final Map<String, Value> fields = new LinkedHashMap<>();

    /** @param units the units in which all books are shown */
    RecordFields(Units units) {
        this.units = units;
    }

    Map<String, Value> fields() {
        return fields;
    }

    /** Adds all components of a record but those with these names. */
    RecordFields add(Record record, Set<String> without) {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            if (!without.contains(component.getName()) && !component.getName().matches(NOT_COMPARED)) {
                add(record.getClass(), component.getName(), value(record, component));
            }
        }
        return this;
    }

    RecordFields add(Record record) {
        return add(record, Set.of());
    }

    private static Object value(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("a record has an accessor for each component", impossible);
        }
    }

    private void add(Class<?> type, String name, Object value) {
        Object held = unwrapped(value);
        if (held instanceof Limits limits) {
            Arrays.stream(LimitKind.values()).forEach(kind -> fields.put(label(kind), shown(limits, kind)));
        } else if (held instanceof Record inner && !(held instanceof Swingweight) && !(held instanceof GapWish)) {
            add(inner);
        } else {
            fields.put(label(type, name), shown(name, held));
        }
    }

    private static String label(LimitKind kind) {
        return kind.label().toLowerCase(Locale.ROOT);
    }

    private Value shown(Limits limits, LimitKind kind) {
        OptionalDouble bound = limits.valueMeasureUnits(kind);
        if (bound.isEmpty()) {
            return new Value("", "");
        }
        boolean isDistance = kind.quantity() == LimitKind.Quantity.GAP || kind.quantity() == LimitKind.Quantity.CARRY;
        return number(isDistance ? "M" : "Deg", bound.getAsDouble());
    }

    /** What an optional holds, nothing if that is nothing. */
    private static Object unwrapped(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.isPresent() ? optional.get() : "";
        }
        if (value instanceof OptionalDouble number) {
            return number.isPresent() ? (Object) number.getAsDouble() : "";
        }
        if (value instanceof OptionalInt number) {
            return number.isPresent() ? (Object) number.getAsInt() : "";
        }
        return value;
    }

    private static String label(Class<?> type, String name) {
        String bare = name.replaceAll("(Deg|KgM2|Kg|Mm|Mps|Rpm|Ratio|Points|M|C)$", "");
        String words = bare.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
        String own = LABELS.get(type.getSimpleName() + "." + name);
        return own != null ? own : String.format(LABELS_IN.getOrDefault(type.getSimpleName(), "%s"), words);
    }

    private Value shown(String name, Object value) {
        if (value instanceof Double number) {
            return number(name, number);
        }
        if (value instanceof GapWish wish) {
            return wish.fixedM().isPresent()
                    ? number("fixedM", wish.fixedM().getAsDouble())
                    : new Value(text(wish.kind()), units.distance().label());
        }
        return new Value(text(value), "");
    }

    private static String text(Object value) {
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof Swingweight swingweight) {
            return swingweight.text();
        }
        if (value instanceof Enum<?> word) {
            return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
        return value instanceof Collection<?> many
                ? many.stream().map(RecordFields::text).collect(Collectors.joining(", "))
                : String.valueOf(value);
    }

    private Value number(String name, double value) {
        if (name.endsWith("KgM2")) {
            return new Value(Numbers.trimmed(value * 1e7, 0), "g cm2");
        }
        if (name.endsWith("Kg")) {
            return new Value(Numbers.trimmed(value * 1000, 2), "g");
        }
        if (name.endsWith("Mps")) {
            return new Value(
                    Numbers.trimmed(units.speed().fromMps(value)), units.speed().label());
        }
        if (name.endsWith("M")) {
            LengthUnit unit = name.matches(CLUB_LENGTHS) ? units.length() : units.distance();
            return new Value(Numbers.trimmed(unit.fromM(value)), unit.label());
        }
        return new Value(Numbers.trimmed(value), unit(name));
    }

    private static String unit(String name) {
        if (name.endsWith("Deg")) {
            return "deg";
        }
        return name.endsWith("Mm") ? "mm" : name.endsWith("Rpm") ? "rpm" : "";
    }
}
