package org.bagwright.domain.option;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.SitsRange;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.units.Swingweight;

/**
 * What is wanted of a club by itself.
 *
 * @param byMeasure the range for each measure by which anything is wanted
 */
public record ClubWishes(Map<Measure, WantedRange> byMeasure) {
    public static final ClubWishes NONE = new ClubWishes(Map.of());

    public ClubWishes {
        byMeasure = Map.copyOf(byMeasure);
    }

    /** The targets of a club's row, and the looks at address that its golfer accepts. */
    public static ClubWishes of(Club club, SitsRange sits) {
        Map<Measure, WantedRange> wanted = new EnumMap<>(Measure.class);
        exactly(wanted, Measure.LOFT, club.targets().loftDeg());
        exactly(wanted, Measure.LIE, OptionalDouble.of(club.lieTargetDeg()));
        wanted.put(
                Measure.SITS,
                new WantedRange(
                        sits.mostOpenDeg().orElse(Double.NEGATIVE_INFINITY),
                        sits.mostClosedDeg().orElse(Double.POSITIVE_INFINITY)));
        exactly(wanted, Measure.CARRY, club.targets().carryM());
        club.targets()
                .swingweight()
                .map(Swingweight::scalePoints)
                .ifPresent(points -> wanted.put(Measure.SWINGWEIGHT, WantedRange.exactly(points)));
        return new ClubWishes(wanted);
    }

    private static void exactly(Map<Measure, WantedRange> wanted, Measure measure, OptionalDouble target) {
        target.ifPresent(value -> wanted.put(measure, WantedRange.exactly(value)));
    }

    /** What is wanted by a measure; empty if nothing is. */
    public Optional<WantedRange> of(Measure measure) {
        return Optional.ofNullable(byMeasure.get(measure));
    }
}
