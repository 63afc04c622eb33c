package org.bagwright.search.exact;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** The groups of matched clubs that can cost anything in a bag; the search knows a group by its place here. */
final class MatchGroups {
    private final int[] groups;

    /** In how many slots a club of each group can be. */
    private final int[] members;

    private MatchGroups(int[] groups, List<List<ExactOption>> slots) {
        this.groups = groups;
        members = IntStream.of(groups)
                .map(group -> (int) slots.stream()
                        .filter(slot -> slot.stream().anyMatch(option -> option.group() == group))
                        .count())
                .toArray();
    }

    /** The groups of which two clubs can be carried, if spread costs anything. */
    static MatchGroups of(ExactBag bag) {
        Map<Integer, Integer> members = new LinkedHashMap<>();
        for (List<ExactOption> slot : bag.slots()) {
            Set<Integer> seen = new HashSet<>();
            slot.stream()
                    .map(ExactOption::group)
                    .filter(seen::add)
                    .forEach(group -> members.merge(group, 1, Integer::sum));
        }
        int[] groups = members.entrySet().stream()
                .filter(entry -> bag.matches() && entry.getKey() >= 0 && entry.getValue() > 1)
                .mapToInt(Map.Entry::getKey)
                .sorted()
                .toArray();
        return new MatchGroups(groups, bag.slots());
    }

    /** The same groups where fewer options are left. */
    MatchGroups in(List<List<ExactOption>> slots) {
        return new MatchGroups(groups, slots);
    }

    int count() {
        return groups.length;
    }

    /** In how many slots a club of a group can be. */
    int members(int group) {
        return members[group];
    }

    /** The place of an option's group, or {@link ExactOption#NO_GROUP} if it cannot cost anything. */
    int of(ExactOption option) {
        for (int place = 0; place < groups.length; place++) {
            if (groups[place] == option.group()) {
                return place;
            }
        }
        return ExactOption.NO_GROUP;
    }

    /** The place of an option's group if the option can differ from the mean there. */
    int matched(ExactOption option) {
        int group = of(option);
        return group >= 0 && members[group] > 1 ? group : ExactOption.NO_GROUP;
    }
}
