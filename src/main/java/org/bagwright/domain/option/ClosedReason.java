package org.bagwright.domain.option;

import java.util.Set;
import java.util.stream.Collectors;

/** Why a plan may not take an option. */
public enum ClosedReason {
    /** The club, or another one of its slot, is pinned. */
    PIN("pin"),
    /** The setting is not among those that are allowed. */
    SETTING("allowed settings"),
    /** The setting turns the shaft, and the golfer keeps it as it is. */
    SHAFT("shaft alignment"),
    /** A limit of the equipment rules. */
    RULE("equipment rules");

    private final String label;

    ClosedReason(String label) {
        this.label = label;
    }

    /** Several of them, in their order. */
    public static String labels(Set<ClosedReason> reasons) {
        return reasons.stream().sorted().map(ClosedReason::label).collect(Collectors.joining(", "));
    }

    /** What closes the option, in a word or two. */
    public String label() {
        return label;
    }
}
