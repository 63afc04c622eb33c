package org.bagwright.flight.golfer;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Values known for some clubs, lent to those between: linear along the places of the clubs, constant beyond the ends. */
final class ClubInterpolation {
    private final NavigableMap<Double, Double> values = new TreeMap<>();
    private final NavigableMap<Double, String> names = new TreeMap<>();

    public void add(double placeM, double value, String name) {
        values.put(placeM, value);
        names.put(placeM, name);
    }

    boolean isEmpty() {
        return values.isEmpty();
    }

    /** Whether some club is this near to a place. */
    boolean hasWithin(double reachM, double placeM) {
        return !values.subMap(placeM - reachM, true, placeM + reachM, true).isEmpty();
    }

    /** The value at a place. */
    public double at(double placeM) {
        Double below = values.floorKey(placeM);
        Double above = values.ceilingKey(placeM);
        if (below == null || above == null) {
            return (below == null ? values.firstEntry() : values.lastEntry()).getValue();
        }
        if (below.equals(above)) {
            return values.get(below);
        }
        double share = (placeM - below) / (above - below);
        return (1 - share) * values.get(below) + share * values.get(above);
    }

    /** Who lends at a place, the shorter club first. */
    public List<String> lendersAt(double placeM) {
        return Stream.of(names.floorEntry(placeM), names.ceilingEntry(placeM))
                .filter(Objects::nonNull)
                .map(Map.Entry::getValue)
                .distinct()
                .toList();
    }
}
