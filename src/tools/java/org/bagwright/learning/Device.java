package org.bagwright.learning;

/** What a golfer's launch monitor tells. */
enum Device {
    FULL_WITH_ATTACK,
    FULL_WITH_HEAD,
    FULL,
    BALL_AND_CARRY,
    CARRY;

    boolean tellsHead() {
        return this == FULL_WITH_ATTACK || this == FULL_WITH_HEAD;
    }

    boolean tellsLaunch() {
        return tellsHead() || this == FULL;
    }

    boolean tellsBall() {
        return this != CARRY;
    }

    /** One half tell the full launch. */
    static Device drawn(Dice dice) {
        double share = dice.between(0, 1);
        if (share < 0.12) {
            return FULL_WITH_ATTACK;
        }
        if (share < 0.35) {
            return FULL_WITH_HEAD;
        }
        if (share < 0.55) {
            return FULL;
        }
        return share < 0.8 ? BALL_AND_CARRY : CARRY;
    }
}
