package org.bagwright.planning.reasons;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BagState;
import org.bagwright.search.BagSearch;

/**
 * The smallest set of musts of a bag that cannot all be met. A plan that keeps some musts breaks others, and the set that
 * is sought contains at least one of the broken ones. So take the smallest set that has one of every such list, and plan
 * with these musts only: either no plan keeps them, which makes the set the answer, or the plan breaks others, which are
 * another list.
 */
final class MustConflict {
    private static final int MOST_ROUNDS = 60;

    private final BagSearch search;
    private final BagOptions bag;
    private final List<Integer> stockLeft;
    private final List<Integer> planned;
    private boolean settled = true;

    /** A must: of one club and one measure, or of a measure of the whole bag, whose club is empty. */
    private record Must(Measure measure, Optional<Club> club) {

        String inWords() {
            return switch (measure.scope()) {
                case NEIGHBOURS -> "the " + measure.label() + "s";
                case GROUP -> "the " + measure.label() + " of clubs of a group";
                case CLUB, ITEMS ->
                    measure.label() + club.map(of -> " of " + of.name()).orElse("");
            };
        }
    }

    /** @param planned a choice from which to start, for each slot the index of its option */
    MustConflict(BagSearch search, BagOptions bag, List<Integer> stockLeft, List<Integer> planned) {
        this.search = search;
        this.bag = bag;
        this.stockLeft = stockLeft;
        this.planned = planned;
    }

    /** Whether the last question was answered: not if the time ended before. */
    boolean settled() {
        return settled;
    }

    /** The conflict in words; empty where all musts can be met, or where it was not settled. */
    Optional<String> smallest() {
        List<Set<Must>> broken = new ArrayList<>();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Set<Must> kept = smallestMeeting(broken);
            BagOptions variant = bag.keepingMusts((measure, club) -> kept.contains(new Must(measure, club)));
            Optional<BagPlan> best = search.best(variant, stockLeft, planned);
            if (best.isEmpty()) {
                settled = false;
                return Optional.empty();
            }
            if (best.get().score().hardBreaks() > 0) {
                return Optional.of(inWords(kept));
            }
            Set<Must> missed = missed(best.get().chosen());
            if (missed.isEmpty()) {
                return Optional.empty();
            }
            broken.add(missed);
        }
        settled = false;
        return Optional.empty();
    }

    private static String inWords(Set<Must> kept) {
        if (kept.isEmpty()) {
            return "no choice makes the carries fall from club to club within the stock and the changes allowed";
        }
        List<String> words = kept.stream().map(Must::inWords).sorted().toList();
        return words.size() == 1
                ? "this must cannot be met by any choice: " + words.get(0)
                : "these musts cannot all be met together, but without any one of them the others can: "
                        + String.join("; ", words);
    }

    /** The musts that a plan leaves broken; none of those that it had to keep, since it broke nothing. */
    private Set<Must> missed(List<Integer> chosen) {
        BagState state = BagSearch.state(bag, chosen);
        Set<Must> missed = new LinkedHashSet<>();
        for (Option option : bag.chosen(chosen)) {
            Optional<Club> club = option.setup().map(ClubSetup::club);
            option.terms().broken().forEach(measure -> missed.add(new Must(measure, club)));
        }
        state.termsWithOthers().broken().forEach(measure -> missed.add(new Must(measure, Optional.empty())));
        return missed;
    }

    /** A smallest set that has a member of each of these sets, by trying sizes from none upward. */
    private static Set<Must> smallestMeeting(List<Set<Must>> sets) {
        for (int size = 0; ; size++) {
            Optional<Set<Must>> found = meeting(sets, new HashSet<>(), size);
            if (found.isPresent()) {
                return found.get();
            }
        }
    }

    private static Optional<Set<Must>> meeting(List<Set<Must>> sets, Set<Must> taken, int more) {
        Optional<Set<Must>> open = sets.stream()
                .filter(set -> set.stream().noneMatch(taken::contains))
                .min(Comparator.comparingInt(Set::size));
        if (open.isEmpty()) {
            return Optional.of(Set.copyOf(taken));
        }
        if (more == 0) {
            return Optional.empty();
        }
        for (Must must : open.get()) {
            Set<Must> with = new HashSet<>(taken);
            with.add(must);
            Optional<Set<Must>> found = meeting(sets, with, more - 1);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }
}
