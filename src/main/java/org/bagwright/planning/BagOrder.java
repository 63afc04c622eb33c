package org.bagwright.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;

/**
 * Whether lofts and lies rise and lengths fall along each bag, slot by slot. Clubs of one kind must be in order; between kinds, and
 * for sleeves that are stated at different settings, some overlap is usual. How much is assumed.
 */
final class BagOrder {
    private static final double LOFT_BETWEEN_KINDS_DEG = 3;
    private static final double LOFT_OF_SLEEVES_DEG = 1.5;
    private static final double LENGTH_OF_A_KIND_M = LengthUnit.INCH.toM(0.75);
    private static final double LENGTH_BETWEEN_KINDS_M = LengthUnit.INCH.toM(1.5);

    private static final double LIE_OF_A_KIND_DEG = 2.5;
    private static final double LIE_BETWEEN_KINDS_DEG = 4;

    private final Book book;
    private final List<Message> messages = new ArrayList<>();

    private BagOrder(Book book) {
        this.book = book;
    }

    /** A message for each club that is out of order, at its cell. */
    static List<Message> messages(Book book) {
        BagOrder order = new BagOrder(book);
        for (Golfer golfer : book.golfers()) {
            List<Club> clubs = book.bagOf(golfer).stream()
                    .filter(club -> club.kind().carries() && !isChipper(club))
                    .toList();
            int told = order.messages.size();
            for (Figure figure : Figure.values()) {
                order.check(clubs, figure);
            }
            if (order.messages.size() == told) {
                new LoftSteps(clubs.stream().filter(Club::inBag).toList())
                        .message()
                        .ifPresent(order.messages::add);
            }
        }
        return order.messages;
    }

    /** A chipper has the loft of a middle iron with the length and lie of a putter. */
    private static boolean isChipper(Club club) {
        return club.name().toLowerCase(Locale.ROOT).contains("chipper");
    }

    private enum Figure {
        LOFT("Loft", "Loft that does not rise along the bag: ") {
            @Override
            OptionalDouble of(Club club) {
                return OptionalDouble.of(club.head().loftDeg());
            }

            @Override
            boolean fits(Club longer, double longerDeg, Club shorter, double shorterDeg) {
                if (longer.kind() != shorter.kind()) {
                    return shorterDeg >= longerDeg - LOFT_BETWEEN_KINDS_DEG;
                }
                boolean sleeved =
                        longer.sleeve().isPresent() || shorter.sleeve().isPresent();
                return sleeved ? shorterDeg >= longerDeg - LOFT_OF_SLEEVES_DEG : shorterDeg > longerDeg;
            }
        },
        LENGTH("Length", "Length that does not fall along the bag: ") {
            @Override
            OptionalDouble of(Club club) {
                return club.parts().lengthM();
            }

            @Override
            boolean fits(Club longer, double longerM, Club shorter, double shorterM) {
                double overlapM = longer.kind() == shorter.kind() ? LENGTH_OF_A_KIND_M : LENGTH_BETWEEN_KINDS_M;
                return shorterM <= longerM + overlapM;
            }
        },
        LIE("Lie", "Lie that falls along the bag: ") {
            @Override
            OptionalDouble of(Club club) {
                return OptionalDouble.of(club.head().lieDeg());
            }

            @Override
            boolean fits(Club longer, double longerDeg, Club shorter, double shorterDeg) {
                double overlapDeg = longer.kind() == shorter.kind() ? LIE_OF_A_KIND_DEG : LIE_BETWEEN_KINDS_DEG;
                return shorterDeg >= longerDeg - overlapDeg;
            }
        };

        private final String column;
        private final String lead;

        Figure(String column, String lead) {
            this.column = column;
            this.lead = lead;
        }

        abstract OptionalDouble of(Club club);

        /** Whether two clubs in this order of slots may have these values. */
        abstract boolean fits(Club longer, double longerMeasureUnits, Club shorter, double shorterMeasureUnits);

        private boolean fits(Club longer, Club shorter) {
            return fits(longer, of(longer).getAsDouble(), shorter, of(shorter).getAsDouble());
        }

        private boolean fitsWith(Club one, Club other) {
            return one.slot() == other.slot() || (one.slot() < other.slot() ? fits(one, other) : fits(other, one));
        }
    }

    private void check(List<Club> clubs, Figure figure) {
        List<Club> stated =
                clubs.stream().filter(club -> figure.of(club).isPresent()).toList();
        List<Club> ordered = longest(stated.stream().filter(Club::inBag).toList(), figure);
        for (Club club : stated) {
            ordered.stream()
                    .filter(other -> !figure.fitsWith(club, other))
                    .findFirst()
                    .ifPresent(other -> messages.add(message(club, other, figure)));
        }
    }

    /** The most clubs that are in order among themselves. */
    private static List<Club> longest(List<Club> bag, Figure figure) {
        List<List<Club>> endingAt = new ArrayList<>();
        List<Club> longest = List.of();
        for (int index = 0; index < bag.size(); index++) {
            Club club = bag.get(index);
            List<Club> best = List.of();
            for (List<Club> earlier : endingAt) {
                boolean fits = earlier.stream().allMatch(other -> figure.fitsWith(other, club));
                best = fits && earlier.size() > best.size() ? earlier : best;
            }
            List<Club> withIt = new ArrayList<>(best);
            withIt.add(club);
            endingAt.add(withIt);
            longest = withIt.size() > longest.size() ? withIt : longest;
        }
        return longest;
    }

    private Message message(Club club, Club other, Figure figure) {
        Function<Club, String> text = each -> text(figure, figure.of(each).getAsDouble());
        return Message.warning(
                        club.cell(),
                        Wording.ofClub(
                                figure.lead,
                                club.golfer(),
                                club.name(),
                                text.apply(club) + ", but " + text.apply(other) + " for " + other.name()
                                        + (other.slot() < club.slot() ? " before it" : " after it"),
                                ". Maybe it is mistyped, or the slots are out of order."))
                .in(figure.column);
    }

    private String text(Figure figure, double valueMeasureUnits) {
        LengthUnit unit = book.settings().units().length();
        return figure == Figure.LENGTH
                ? Numbers.trimmed(unit.fromM(valueMeasureUnits), 2) + " " + unit.label()
                : Numbers.trimmed(valueMeasureUnits, 2) + " degrees";
    }
}
