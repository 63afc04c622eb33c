package org.bagwright.domain.club;

import java.util.List;

/**
 * What a plan may do with a club.
 *
 * @param bendRange the bends that may be planned
 * @param pinned whether the club stays as it is today
 * @param allowed marks of the settings that may be planned; empty allows all
 * @param optional whether its slot may stay empty
 * @param limits what a plan keeps of it; the golfer's limits hold where it states none
 */
public record Freedom(BendRange bendRange, boolean pinned, List<String> allowed, boolean optional, Limits limits) {
    public Freedom {
        allowed = List.copyOf(allowed);
    }
}
