package org.bagwright.domain.book;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.bagwright.domain.units.LengthUnit;

/**
 * What a plan is judged by, in the order in which books and sheets show it: its scope, its unit, and what counts where a
 * book says nothing of it.
 */
public enum Measure {
    LOFT(Scope.CLUB, MeasureUnit.DEGREE, 0.5, 1),
    LIE(Scope.CLUB, MeasureUnit.DEGREE, 1, 0.5),
    SITS(Scope.CLUB, MeasureUnit.DEGREE, 1, 1),
    CARRY(Scope.CLUB, MeasureUnit.DISTANCE, LengthUnit.YARD.toM(5), 1),
    GAP(Scope.NEIGHBOURS, MeasureUnit.DISTANCE, LengthUnit.YARD.toM(3), 2),
    /** How much less far the longest club flies than today's longest: the first in slot order of each that flies. */
    REACH(Scope.LONGEST, MeasureUnit.DISTANCE, LengthUnit.YARD.toM(3), 1),
    SWINGWEIGHT(Scope.CLUB, MeasureUnit.POINT, 1, 0.5),
    SPREAD(Scope.GROUP, MeasureUnit.MATCH, 1, 0),
    CHANGE(Scope.ITEMS, MeasureUnit.ITEM, 1, 0.05);

    /** On what a measure depends. */
    public enum Scope {
        /** A number of one club, against what is wanted of it. */
        CLUB,
        /** A club and the next one that flies. */
        NEIGHBOURS,
        /** The longest club that flies, against today's longest. */
        LONGEST,
        /** A club and the mean of its group. */
        GROUP,
        /** How many items of a slot differ from today: each costs the same, and no must limits them. */
        ITEMS
    }

    private final Scope scope;
    private final MeasureUnit unit;
    private final double toleranceMeasureUnits;
    private final double importancePoints;

    Measure(Scope scope, MeasureUnit unit, double toleranceMeasureUnits, double importancePoints) {
        this.scope = scope;
        this.unit = unit;
        this.toleranceMeasureUnits = toleranceMeasureUnits;
        this.importancePoints = importancePoints;
    }

    /** The measures that an option has by itself, whatever the rest of the bag. */
    public static List<Measure> ofOptions() {
        return Arrays.stream(values()).filter(Measure::isOfOption).toList();
    }

    /** The measure as it is written in a book. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The label with a capital, as a heading has it. */
    public String heading() {
        return name().charAt(0) + label().substring(1);
    }

    public Scope scope() {
        return scope;
    }

    public MeasureUnit unit() {
        return unit;
    }

    /** Whether an option has it by itself, whatever the rest of the bag. */
    public boolean isOfOption() {
        return scope == Scope.CLUB || scope == Scope.ITEMS;
    }

    /** Whether a must can limit it: not the number of items. */
    public boolean canBeMust() {
        return scope != Scope.ITEMS;
    }

    /** Whether it says how a club is set or where its ball goes, so that it can be the worst miss of a bag. */
    public boolean canBeWorstMiss() {
        return unit == MeasureUnit.DEGREE || unit == MeasureUnit.DISTANCE;
    }

    /** The tolerance of a book that gives none and matches its clubs like this. */
    double usualToleranceMeasureUnits(Matching matching) {
        return unit == MeasureUnit.MATCH ? matching.by().usualTolerance() : toleranceMeasureUnits;
    }

    /** The cost of one tolerance in a book that gives none. */
    double usualImportancePoints() {
        return importancePoints;
    }
}
