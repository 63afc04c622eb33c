package org.bagwright.planning.options;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;
import org.bagwright.domain.units.Swingweight;

/**
 * Wishes that no option of a club comes near: a target, or a figure from which its options are computed, is more likely
 * mistyped. How far is near is assumed.
 *
 * @param golfer whose clubs they are
 * @param slots the slots of his bag
 * @param distance the unit of carries
 */
record FarWishes(Golfer golfer, List<SlotOptions> slots, LengthUnit distance) {
    private static final double FAR_LOFT_DEG = 2.5;
    private static final double FAR_LIE_DEG = 3;
    private static final double FAR_GOLFER_LIE_DEG = 5;
    private static final double FAR_CARRY_M = LengthUnit.YARD.toM(15);
    private static final double FAR_GAP_M = LengthUnit.YARD.toM(10);
    private static final double FAR_POINTS = 6;

    private static final Map<Measure, Double> FAR_MEASURE_UNITS = new EnumMap<>(Map.of(
            Measure.LOFT, FAR_LOFT_DEG,
            Measure.LIE, FAR_LIE_DEG,
            Measure.CARRY, FAR_CARRY_M,
            Measure.SWINGWEIGHT, FAR_POINTS));

    /** A message at each wish that is far off. */
    List<Message> messages() {
        List<Message> messages = new ArrayList<>();
        for (SlotOptions made : slots) {
            for (Club club : made.clubs()) {
                List<Option> options = made.optionsOf(club);
                FAR_MEASURE_UNITS.keySet().stream().sorted().forEach(measure -> target(club, options, measure)
                        .ifPresent(messages::add));
                golferLie(club).ifPresent(messages::add);
            }
        }
        for (int index = 1; index < slots.size(); index++) {
            gap(slots.get(index - 1), slots.get(index)).ifPresent(messages::add);
        }
        return messages;
    }

    private Optional<Message> target(Club club, List<Option> options, Measure measure) {
        OptionalDouble wanted = wanted(club, measure);
        if (wanted.isEmpty()) {
            return Optional.empty();
        }
        return options.stream()
                .flatMap(option -> option.setup().stream())
                .flatMapToDouble(setup -> setup.value(measure).stream())
                .boxed()
                .min(Comparator.comparingDouble(value -> Math.abs(value - wanted.getAsDouble())))
                .filter(nearest -> Math.abs(nearest - wanted.getAsDouble()) > FAR_MEASURE_UNITS.get(measure))
                .map(nearest -> message(
                        club,
                        label(measure) + " that no option of its club comes near: ",
                        text(measure, wanted.getAsDouble()) + ", the nearest has " + text(measure, nearest),
                        label(measure)));
    }

    private static OptionalDouble wanted(Club club, Measure measure) {
        return switch (measure) {
            case LOFT -> club.targets().loftDeg();
            case LIE -> club.targets().lieDeg();
            case CARRY -> club.targets().carryM();
            case SWINGWEIGHT ->
                club.targets()
                        .swingweight()
                        .map(Swingweight::scalePoints)
                        .map(OptionalDouble::of)
                        .orElseGet(OptionalDouble::empty);
            case SITS, GAP, REACH, SPREAD, CHANGE -> OptionalDouble.empty();
        };
    }

    private static String label(Measure measure) {
        return measure.heading() + " target";
    }

    private String text(Measure measure, double valueMeasureUnits) {
        return switch (measure) {
            case CARRY -> distance(valueMeasureUnits);
            case SWINGWEIGHT -> new Swingweight(valueMeasureUnits).text();
            case LOFT, LIE, SITS, GAP, REACH, SPREAD, CHANGE -> Numbers.trimmed(valueMeasureUnits, 1) + " degrees";
        };
    }

    private String distance(double carriedM) {
        return Math.round(distance.fromM(carriedM)) + " " + distance.label();
    }

    private Optional<Message> golferLie(Club club) {
        double headDeg = club.head().lieDeg();
        return club.targets().golferLieDeg().stream()
                .filter(lieDeg -> Math.abs(lieDeg - headDeg) > FAR_GOLFER_LIE_DEG)
                .mapToObj(lieDeg -> message(
                        club,
                        "Golfer lie far from the lie of the club: ",
                        Numbers.trimmed(lieDeg, 1) + " degrees, the club has " + Numbers.trimmed(headDeg, 1),
                        "Golfer lie"))
                .findFirst();
    }

    /** The wish of a club's own row for the gap to the next slot. */
    private Optional<Message> gap(SlotOptions longer, SlotOptions shorter) {
        Club club = longer.main();
        OptionalDouble wishM = club.targets().gapWishM();
        double[] carriesM = carriesM(longer.optionsOf(club));
        double[] nextM = carriesM(shorter.options());
        if (wishM.isEmpty() || carriesM.length == 0 || nextM.length == 0) {
            return Optional.empty();
        }
        double leastM = carriesM[0] - nextM[nextM.length - 1];
        double mostM = carriesM[carriesM.length - 1] - nextM[0];
        double nearestM = Math.min(mostM, Math.max(leastM, wishM.getAsDouble()));
        return Math.abs(nearestM - wishM.getAsDouble()) > FAR_GAP_M
                ? Optional.of(message(
                        club,
                        "Gap wish that no options of its club and the next come near: ",
                        distance(wishM.getAsDouble()) + ", the nearest is " + distance(nearestM),
                        "Gap wish"))
                : Optional.empty();
    }

    /** In rising order. */
    private static double[] carriesM(List<Option> options) {
        return options.stream()
                .flatMapToDouble(option -> option.carryM().stream())
                .sorted()
                .toArray();
    }

    private Message message(Club club, String lead, String detail, String column) {
        return Message.warning(
                        club.cell(),
                        Wording.ofClub(
                                lead, golfer.name(), club.name(), detail, ". Maybe a figure of the club is mistyped."))
                .in(column);
    }
}
