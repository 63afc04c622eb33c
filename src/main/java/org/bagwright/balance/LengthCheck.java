package org.bagwright.balance;

import java.util.OptionalDouble;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.BuildNumbers;

/**
 * A club's length and the limits that the governing bodies' published equipment rules set: a reason to check, never an
 * approval.
 *
 * @param figureM the club length, metres
 * @param shortestM the least length, metres
 * @param longestM the greatest length, metres; empty where there is none
 */
public record LengthCheck(double figureM, double shortestM, OptionalDouble longestM) {
    private static final double SHORTEST_M = 18 * 0.0254;

    /** A figure that equals its limit up to rounding is inside it. */
    private static final double ROUNDING_M = 1e-6;

    /**
     * The check of a build: 18 in or more, and for all but putters at most the longest.
     *
     * @param longestM the greatest length that the book checks against, metres
     */
    public static LengthCheck of(ClubKind kind, BuildNumbers build, double longestM) {
        OptionalDouble most = kind == ClubKind.PUTTER ? OptionalDouble.empty() : OptionalDouble.of(longestM);
        return new LengthCheck(build.lengthM(), SHORTEST_M, most);
    }

    public boolean tooShort() {
        return !(figureM >= shortestM - ROUNDING_M);
    }

    public boolean tooLong() {
        return longestM.isPresent() && !(figureM <= longestM.getAsDouble() + ROUNDING_M);
    }
}
