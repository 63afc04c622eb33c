package org.bagwright.flight.golfer;

import java.util.NavigableMap;
import java.util.TreeMap;

/** Values known for some clubs, lent to those between: linear along the places of the clubs, constant beyond the ends. */
final class ClubInterpolation {
    private final NavigableMap<Double, Double> values = new TreeMap<>();

    /** A value at a place. */
    void add(double placeM, double value) {
        values.put(placeM, value);
    }

    /** The value at a place. */
    double at(double placeM) {
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
}
