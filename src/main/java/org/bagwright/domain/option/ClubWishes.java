package org.bagwright.domain.option;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.Limits;
import org.bagwright.domain.club.StatedLimit;
import org.bagwright.domain.units.Swingweight;

/**
 * What is wanted of a club: wishes, which are priced, and limits, which are kept.
 *
 * @param byMeasure the range for each measure by which anything is wanted of the club by itself
 * @param limits its own limits, and its golfer's where it has none
 */
public record ClubWishes(Map<Measure, WantedRange> byMeasure, Limits limits) {
    public static final ClubWishes NONE = new ClubWishes(Map.of(), Limits.NONE);

    public ClubWishes {
        byMeasure = Map.copyOf(byMeasure);
    }

    /** The targets and limits of a club's row, and the limits of its golfer. */
    public static ClubWishes of(Club club, Limits ofGolfer) {
        Limits limits = club.freedom().limits().orElse(ofGolfer);
        Map<Measure, WantedRange> wanted = new EnumMap<>(Measure.class);
        exactly(wanted, Measure.LOFT, club.targets().loftDeg());
        exactly(wanted, Measure.LIE, OptionalDouble.of(club.lieTargetDeg()));
        wanted.put(Measure.SITS, range(limits, LimitKind.MOST_OPEN, LimitKind.MOST_CLOSED));
        exactly(wanted, Measure.CARRY, club.targets().carryM());
        club.targets()
                .swingweight()
                .map(Swingweight::scalePoints)
                .ifPresent(points -> wanted.put(Measure.SWINGWEIGHT, WantedRange.exactly(points)));
        return new ClubWishes(wanted, limits);
    }

    private static WantedRange range(Limits limits, LimitKind least, LimitKind most) {
        return new WantedRange(
                limits.valueMeasureUnits(least).orElse(Double.NEGATIVE_INFINITY),
                limits.valueMeasureUnits(most).orElse(Double.POSITIVE_INFINITY));
    }

    /** The gaps to the next club that flies inside their limits, metres. */
    public WantedRange gapLimitsM() {
        return range(limits, LimitKind.GAP_LEAST, LimitKind.GAP_MOST);
    }

    /** The same wishes with the limits that pass a test. */
    ClubWishes keeping(Predicate<StatedLimit> kept) {
        return new ClubWishes(byMeasure, limits.only(kept));
    }

    private static void exactly(Map<Measure, WantedRange> wanted, Measure measure, OptionalDouble target) {
        target.ifPresent(value -> wanted.put(measure, WantedRange.exactly(value)));
    }

    /** What is wanted by a measure; empty if nothing is. */
    public Optional<WantedRange> of(Measure measure) {
        return Optional.ofNullable(byMeasure.get(measure));
    }
}
