package org.bagwright.planning.reasons;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.HardRule;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BagState;
import org.bagwright.search.BagSearch;

/**
 * The smallest set of musts and limits of a bag that cannot all be kept. A plan that keeps some of them breaks others, and the set that
 * is sought contains at least one of the broken ones. So take the smallest set that has one of every such list, and plan
 * with these rules only: either no plan keeps them, which makes the set the answer, or the plan breaks others, which are
 * another list.
 */
final class MustConflict {
    private static final int MOST_ROUNDS = 60;

    private final BagSearch search;
    private final BagOptions bag;
    private final List<Integer> stockLeft;

    private MustConflict(BagSearch search, BagOptions bag, List<Integer> stockLeft) {
        this.search = search;
        this.bag = bag;
        this.stockLeft = stockLeft;
    }

    /** The conflict in words; empty where all can be kept, or where none was settled in the rounds that are counted. */
    static Optional<String> of(BagSearch search, BagOptions bag, List<Integer> stockLeft) {
        return new MustConflict(search, bag, stockLeft).smallest();
    }

    private Optional<String> smallest() {
        List<Set<HardRule>> broken = new ArrayList<>();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Set<HardRule> kept = smallestMeeting(broken);
            BagOptions variant = bag.keeping(kept::contains);
            Optional<BagPlan> best = search.best(variant, stockLeft);
            if (best.isEmpty()) {
                return Optional.empty();
            }
            if (best.get().score().hardBreaks() > 0) {
                return Optional.of(inWords(kept));
            }
            Set<HardRule> missed = missed(best.get().chosen());
            if (missed.isEmpty()) {
                return Optional.empty();
            }
            broken.add(missed);
        }
        return Optional.empty();
    }

    private static String inWords(Set<HardRule> kept) {
        if (kept.isEmpty()) {
            return "no choice makes the carries fall from club to club within the stock and the changes allowed";
        }
        List<String> words = kept.stream().map(MustConflict::inWords).sorted().toList();
        boolean musts = kept.stream().allMatch(HardRule.Must.class::isInstance);
        if (words.size() == 1) {
            return (musts ? "this must cannot be met by any choice: " : "this limit cannot be kept by any choice: ")
                    + words.get(0);
        }
        return (musts ? "these musts cannot all be met together" : "these rules cannot all be kept together")
                + ", but without any one of them the others can: " + String.join("; ", words);
    }

    private static String inWords(HardRule rule) {
        if (rule instanceof HardRule.Kept kept) {
            return kept.limit().kind().label() + " (" + kept.limit().cell() + ") for " + kept.club().name();
        }
        HardRule.Must must = (HardRule.Must) rule;
        String measure = must.measure().label();
        return switch (must.measure().scope()) {
            case NEIGHBOURS -> "the " + measure + "s";
            case LONGEST -> "the " + measure + " of the longest club";
            case GROUP -> "the " + measure + " of clubs of a group";
            case CLUB, ITEMS ->
                measure + must.club().map(of -> " of " + of.name()).orElse("");
        };
    }

    /** The musts and limits that a plan leaves broken; none of those that it had to keep, since it broke nothing. */
    private Set<HardRule> missed(List<Integer> chosen) {
        BagState state = BagSearch.state(bag, chosen);
        Set<HardRule> missed = new LinkedHashSet<>();
        List<Option> options = bag.chosen(chosen);
        for (int slot = 0; slot < options.size(); slot++) {
            Option option = options.get(slot);
            Optional<Club> club = option.setup().map(ClubSetup::club);
            option.terms().broken().forEach(measure -> missed.add(new HardRule.Must(measure, club)));
            Terms terms = option.terms().plus(state.termsWithOthers(slot));
            option.setup().ifPresent(setup -> terms.brokenLimits().forEach(kind -> missed.add(limit(setup, kind))));
        }
        state.termsWithOthers()
                .broken()
                .forEach(measure -> missed.add(new HardRule.Must(measure, Optional.empty())));
        return missed;
    }

    private static HardRule limit(ClubSetup setup, LimitKind kind) {
        return new HardRule.Kept(setup.wishes().limits().of(kind).orElseThrow(), setup.club());
    }

    /** A smallest set that has a member of each of these sets, by trying sizes from none upward. */
    private static Set<HardRule> smallestMeeting(List<Set<HardRule>> sets) {
        for (int size = 0; ; size++) {
            Optional<Set<HardRule>> found = meeting(sets, new HashSet<>(), size);
            if (found.isPresent()) {
                return found.get();
            }
        }
    }

    private static Optional<Set<HardRule>> meeting(List<Set<HardRule>> sets, Set<HardRule> taken, int more) {
        Optional<Set<HardRule>> open = sets.stream()
                .filter(set -> set.stream().noneMatch(taken::contains))
                .min(Comparator.comparingInt(Set::size));
        if (open.isEmpty()) {
            return Optional.of(Set.copyOf(taken));
        }
        if (more == 0) {
            return Optional.empty();
        }
        for (HardRule rule : open.get()) {
            Set<HardRule> with = new HashSet<>(taken);
            with.add(rule);
            Optional<Set<HardRule>> found = meeting(sets, with, more - 1);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }
}
