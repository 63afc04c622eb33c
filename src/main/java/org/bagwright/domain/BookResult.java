package org.bagwright.domain;

import java.util.List;

/**
 * A planned book.
 *
 * @param book what was planned
 * @param bags the bags, in the order of the golfers
 * @param messages everything a person should know, from reading to planning
 * @param seed the seed of the search
 * @param searchS how long the search took, seconds
 */
public record BookResult(Book book, List<BagResult> bags, List<Message> messages, long seed, double searchS) {
    public BookResult {
        bags = List.copyOf(bags);
        messages = List.copyOf(messages);
    }

    public double todayPoints() {
        return bags.stream()
                .mapToDouble(bag -> bag.today().score().penaltyPoints())
                .sum();
    }

    public double plannedPoints() {
        return bags.stream()
                .mapToDouble(bag -> bag.planned().score().penaltyPoints())
                .sum();
    }

    public double boundPoints() {
        return bags.stream().mapToDouble(BagResult::boundPoints).sum();
    }

    public boolean proven() {
        return bags.stream().allMatch(BagResult::proven);
    }

    public long plannedBreaks() {
        return bags.stream()
                .mapToLong(bag -> bag.planned().score().hardBreaks())
                .sum();
    }

    public long todayBreaks() {
        return bags.stream().mapToLong(bag -> bag.today().score().hardBreaks()).sum();
    }
}
