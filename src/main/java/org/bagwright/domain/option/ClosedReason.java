package org.bagwright.domain.option;

/** Why a plan may not take an option. */
public enum ClosedReason {
    /** The club, or another one of its slot, is pinned. */
    PIN,
    /** The setting is not among those that are allowed. */
    SETTING,
    /** The setting turns the shaft, and the golfer keeps it as it is. */
    SHAFT,
    /** A limit of the equipment rules. */
    RULE
}
