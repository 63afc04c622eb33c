package org.bagwright.search.score;

import org.bagwright.domain.option.BagOptions;

/**
 * How many points of the book one point of the search is worth. Within the search no term costs more than ten million of
 * its points, so that sums stay exact in whole numbers. That does no harm to a best plan that costs less than these: a plan
 * with a term that was cut off costs more. Where the best plan costs more, the search counts in larger points.
 *
 * @param bookPoints a power of ten, at least 1
 */
public record PenaltyScale(double bookPoints) {
    /** Points as the book counts them. */
    public static final PenaltyScale BOOK = new PenaltyScale(1);

    /** The finest scale on which no part of a penalty is cut off. */
    public static PenaltyScale of(double penaltyPoints) {
        double scale = 1;
        while (penaltyPoints / scale >= PenaltyRules.MOST_POINTS) {
            scale *= 10;
        }
        return new PenaltyScale(scale);
    }

    /** The bag with its points in those of the search. */
    public BagOptions of(BagOptions bag) {
        return bookPoints == 1 ? bag : bag.cheaperBy(bookPoints);
    }

    /**
     * Whether a best plan found on this scale is the best plan of the book: nothing of it is cut off, and its penalty is
     * at least a hundred thousand million of the search's units, or counted as the book does.
     */
    public boolean suits(double penaltyPoints) {
        double finest = of(penaltyPoints).bookPoints;
        return finest <= bookPoints && (bookPoints == 1 || (finest > 1 && bookPoints <= 10 * finest));
    }
}
