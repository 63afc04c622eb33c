package org.bagwright.domain.club;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.bagwright.domain.units.Checks;

/**
 * The limits of a golfer or of a club, at most one of each kind.
 *
 * @param byKind what is limited
 */
public record Limits(Map<LimitKind, StatedLimit> byKind) {
    public static final Limits NONE = new Limits(Map.of());

    public Limits {
        byKind = Map.copyOf(byKind);
        byKind.forEach((kind, limit) -> Checks.that(limit.kind() == kind, "a limit must be under its own kind"));
    }

    /** These limits; of two of a kind the last. */
    public static Limits of(List<StatedLimit> limits) {
        Map<LimitKind, StatedLimit> byKind = new EnumMap<>(LimitKind.class);
        limits.forEach(limit -> byKind.put(limit.kind(), limit));
        return new Limits(byKind);
    }

    public Optional<StatedLimit> of(LimitKind kind) {
        return Optional.ofNullable(byKind.get(kind));
    }

    /** The bound of a kind, in its unit; empty where there is no limit. */
    public OptionalDouble valueMeasureUnits(LimitKind kind) {
        StatedLimit limit = byKind.get(kind);
        return limit == null ? OptionalDouble.empty() : OptionalDouble.of(limit.valueMeasureUnits());
    }

    /** All limits, in the order of their kinds. */
    public List<StatedLimit> all() {
        return Arrays.stream(LimitKind.values())
                .filter(byKind::containsKey)
                .map(byKind::get)
                .toList();
    }

    /** These limits, and of the kinds that they leave free those of others. */
    public Limits orElse(Limits others) {
        Map<LimitKind, StatedLimit> both = new EnumMap<>(LimitKind.class);
        both.putAll(others.byKind);
        both.putAll(byKind);
        return new Limits(both);
    }

    /** The limits that pass a test. */
    public Limits only(Predicate<StatedLimit> kept) {
        return byKind.isEmpty() ? this : of(all().stream().filter(kept).toList());
    }

    /** Each limit from below with the one from above that no value can keep together with it. */
    public List<List<StatedLimit>> contradictions() {
        List<List<StatedLimit>> found = new ArrayList<>();
        for (StatedLimit least : all()) {
            for (StatedLimit most : all()) {
                if (least.kind().isLeast()
                        && !most.kind().isLeast()
                        && least.kind().quantity() == most.kind().quantity()
                        && least.valueMeasureUnits() > most.valueMeasureUnits()) {
                    found.add(List.of(least, most));
                }
            }
        }
        return found;
    }

    /** The limits in words, such as {@code Most open, Gap least}. */
    @Override
    public String toString() {
        return all().stream()
                .map(limit -> limit.kind().label() + " " + limit.valueMeasureUnits())
                .collect(Collectors.joining(", "));
    }
}
