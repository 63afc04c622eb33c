package org.bagwright.planning;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.text.Numbers;

/**
 * Lofts of irons and wedges that rise but in uneven steps: common practice is 3 to 5 degrees between irons and 4 to 6 between
 * wedges. The limits are assumed.
 *
 * @param clubs the clubs of a bag that are in order, by slot
 */
record LoftSteps(List<Club> clubs) {
    private static final double IRON_OFF_DEG = 2.6;
    private static final double WEDGE_OFF_DEG = 3.2;

    /** Farther apart, a club of the set is left out between them. */
    private static final double MOST_OF_TWO_STEPS_DEG = 11.5;

    /** A message for the club that is farthest off the mean of the clubs next to it. */
    Optional<Message> message() {
        return IntStream.range(1, clubs.size() - 1)
                .filter(index -> isOfASet(index - 1) && isOfASet(index) && isOfASet(index + 1))
                .filter(index -> loftDeg(index + 1) - loftDeg(index - 1) < MOST_OF_TWO_STEPS_DEG)
                .filter(index -> Math.abs(offDeg(index)) > mostDeg(index))
                .boxed()
                .max(Comparator.comparingDouble(index -> Math.abs(offDeg(index))))
                .map(this::message);
    }

    private boolean isOfASet(int index) {
        Club club = clubs.get(index);
        return club.kind() == ClubKind.IRON || club.kind() == ClubKind.WEDGE;
    }

    private double mostDeg(int index) {
        boolean irons = clubs.subList(index - 1, index + 2).stream().allMatch(club -> club.kind() == ClubKind.IRON);
        return irons ? IRON_OFF_DEG : WEDGE_OFF_DEG;
    }

    private double offDeg(int index) {
        return loftDeg(index) - usualDeg(index);
    }

    private double usualDeg(int index) {
        return (loftDeg(index - 1) + loftDeg(index + 1)) / 2;
    }

    private double loftDeg(int index) {
        return clubs.get(index).head().loftDeg();
    }

    private Message message(int index) {
        Club club = clubs.get(index);
        String detail = Numbers.trimmed(loftDeg(index), 2) + " degrees, about " + Numbers.trimmed(usualDeg(index), 1)
                + " between " + clubs.get(index - 1).name() + " and "
                + clubs.get(index + 1).name();
        return Message.warning(
                        club.cell(),
                        Wording.ofClub(
                                "Loft off the steps of the clubs next to it: ",
                                club.golfer(),
                                club.name(),
                                detail,
                                ". Maybe it is mistyped."))
                .in("Loft");
    }
}
