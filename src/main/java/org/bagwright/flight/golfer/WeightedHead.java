package org.bagwright.flight.golfer;

import org.bagwright.domain.club.ClubKind;

/**
 * What another weighting makes of a head, seen from today's. Head frame of a right-handed head soled as designed: x toward
 * the target, y toward the golfer, z up; a left-handed head is its mirror image, so that y is toward the golfer there too.
 *
 * @param todayMassKg head mass with today's pieces, kg
 * @param massKg head mass with the pieces of this weighting, kg
 * @param shift from today's centre of gravity to that of this weighting
 * @param inertia of this weighting, about its own centre of gravity
 * @param todayDepthM from the plane of the face square back to today's centre of gravity, m
 */
public record WeightedHead(double todayMassKg, double massKg, Shift shift, Inertia inertia, double todayDepthM) {
    public WeightedHead {
        if (!(positive(todayMassKg) && positive(massKg))) {
            throw new IllegalArgumentException(
                    "a head needs a mass above 0, found " + todayMassKg + " kg today and " + massKg + " kg");
        }
        if (!(todayDepthM >= 0 && Double.isFinite(todayDepthM))) {
            throw new IllegalArgumentException(
                    "the centre of gravity must be 0 or more behind the face, found " + todayDepthM + " m");
        }
    }

    /**
     * A shift of the centre of gravity, head frame.
     *
     * @param xM toward the target, m
     * @param yM toward the golfer, m
     * @param zM up, m
     */
    public record Shift(double xM, double yM, double zM) {
        public static final Shift NONE = new Shift(0, 0, 0);

        public Shift {
            if (!(Double.isFinite(xM) && Double.isFinite(yM) && Double.isFinite(zM))) {
                throw new IllegalArgumentException(
                        "a centre of gravity cannot shift by " + xM + ", " + yM + ", " + zM + " m");
            }
        }
    }

    /**
     * A symmetric tensor of inertia, head frame. Off the diagonal are the entries of the tensor, which are the products
     * of inertia with their sign turned: {@code xy} is minus the sum of mass times x times y.
     *
     * @param xxKgM2 about the x axis, kg m2
     * @param yyKgM2 about the y axis, kg m2
     * @param zzKgM2 about the z axis, kg m2
     * @param xyKgM2 row x, column y, kg m2
     * @param xzKgM2 row x, column z, kg m2
     * @param yzKgM2 row y, column z, kg m2
     */
    public record Inertia(double xxKgM2, double yyKgM2, double zzKgM2, double xyKgM2, double xzKgM2, double yzKgM2) {
        private static final double EVEN_RATIO = 1e-9;

        /** Refuses a tensor with which some rotation would have no energy. */
        public Inertia {
            double secondMinor = xxKgM2 * yyKgM2 - xyKgM2 * xyKgM2;
            double determinant = zzKgM2 * secondMinor
                    - xxKgM2 * yzKgM2 * yzKgM2
                    - yyKgM2 * xzKgM2 * xzKgM2
                    + 2 * xyKgM2 * xzKgM2 * yzKgM2;
            if (!(positive(xxKgM2) && positive(secondMinor) && positive(determinant))) {
                throw new IllegalArgumentException("no body has these moments of inertia: " + xxKgM2 + ", " + yyKgM2
                        + ", " + zzKgM2 + " and off the diagonal " + xyKgM2 + ", " + xzKgM2 + ", " + yzKgM2 + " kg m2");
            }
        }

        /**
         * A tensor by its rows.
         *
         * @param rowsKgM2 rows and columns x, y, z, kg m2
         * @throws IllegalArgumentException when it is not 3 by 3, not symmetric to 1e-9 of its trace, or no body's
         */
        public static Inertia ofRows(double[][] rowsKgM2) {
            if (rowsKgM2.length != 3 || rowsKgM2[0].length != 3 || rowsKgM2[1].length != 3 || rowsKgM2[2].length != 3) {
                throw new IllegalArgumentException("a tensor of inertia has three rows of three");
            }
            double evenKgM2 = EVEN_RATIO * (rowsKgM2[0][0] + rowsKgM2[1][1] + rowsKgM2[2][2]);
            return new Inertia(
                    rowsKgM2[0][0],
                    rowsKgM2[1][1],
                    rowsKgM2[2][2],
                    even(rowsKgM2[0][1], rowsKgM2[1][0], evenKgM2),
                    even(rowsKgM2[0][2], rowsKgM2[2][0], evenKgM2),
                    even(rowsKgM2[1][2], rowsKgM2[2][1], evenKgM2));
        }

        private static double even(double oneKgM2, double otherKgM2, double evenKgM2) {
            if (!(Math.abs(oneKgM2 - otherKgM2) <= evenKgM2)) {
                throw new IllegalArgumentException(
                        "a tensor of inertia is symmetric, found " + oneKgM2 + " against " + otherKgM2 + " kg m2");
            }
            return oneKgM2;
        }

        /** Rows and columns x, y, z, kg m2. */
        double[][] rows() {
            return new double[][] {
                {xxKgM2, xyKgM2, xzKgM2},
                {xyKgM2, yyKgM2, yzKgM2},
                {xzKgM2, yzKgM2, zzKgM2}
            };
        }
    }

    /**
     * Depth of the centre of gravity behind the face where a book is silent, m. Assumed, without a source: what a fitter
     * would guess of a plain head of the kind.
     */
    public static double assumedDepthM(ClubKind kind) {
        return switch (kind) {
            case DRIVER -> 0.035;
            case WOOD -> 0.028;
            case HYBRID -> 0.020;
            case PUTTER -> 0.015;
            case IRON -> 0.009;
            case WEDGE -> 0.007;
        };
    }

    private static boolean positive(double value) {
        return value > 0 && Double.isFinite(value);
    }
}
