package org.bagwright.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bagwright.domain.Aims;
import org.bagwright.domain.BagOptions;
import org.bagwright.domain.BagState;
import org.bagwright.domain.Club;
import org.bagwright.domain.Measure;
import org.bagwright.domain.Option;
import org.bagwright.search.BagSearch;

/**
 * The smallest set of musts of a bag that cannot all be met. Every plan that meets some musts leaves others broken, and a
 * conflict has to hold at least one of those: so the smallest set that meets all such lists of broken ones is asked for,
 * tried, and either cannot be met, which makes it the answer, or gives another list.
 */
final class MustConflict {
    private static final int MOST_ROUNDS = 60;

    private final BagSearch search;
    private final BagOptions bag;
    private final List<Integer> stockLeft;
    private final OwnMusts musts;
    private final Aims aims;

    /** A must: of one club and one measure, or of a measure of the whole bag, whose club is empty. */
    private record Must(Measure measure, Optional<Club> club) {

        String inWords() {
            return club.map(of -> measure.label() + " of " + of.name())
                    .orElse(measure == Measure.GAP ? "the gaps" : "the spread of clubs of a group");
        }
    }

    private MustConflict(BagSearch search, Aims aims, BagOptions bag, List<Integer> stockLeft) {
        this.search = search;
        this.bag = bag;
        this.stockLeft = stockLeft;
        this.aims = aims;
        this.musts = new OwnMusts(bag.golfer(), aims);
    }

    /** The conflict in words; empty where all musts can be met, or where none was settled in the rounds that are counted. */
    static Optional<String> of(BagSearch search, Aims aims, BagOptions bag, List<Integer> stockLeft) {
        return new MustConflict(search, aims, bag, stockLeft).smallest();
    }

    private Optional<String> smallest() {
        List<Set<Must>> broken = new ArrayList<>();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Set<Must> kept = smallestMeeting(broken);
            Optional<BagState> best = keeping(kept);
            if (best.isEmpty()) {
                return Optional.empty();
            }
            BagState found = best.get();
            if (found.score().hardBreaks() > 0) {
                return Optional.of(inWords(kept));
            }
            Set<Must> missed = missed(found, kept);
            if (missed.isEmpty()) {
                return Optional.empty();
            }
            broken.add(missed);
        }
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

    /** The best plan that has only these musts to keep, scored by the bag's own terms. */
    private Optional<BagState> keeping(Set<Must> kept) {
        boolean gapMust = holds(kept, Measure.GAP);
        boolean spreadMust = holds(kept, Measure.SPREAD);
        BagOptions variant = Variant.withMusts(bag, option -> ownBreaks(option, kept), gapMust, spreadMust);
        return search.best(variant, stockLeft).map(plan -> BagSearch.state(variant, plan.chosen()));
    }

    private static boolean holds(Set<Must> kept, Measure measure) {
        return kept.contains(new Must(measure, Optional.empty()));
    }

    private long ownBreaks(Option option, Set<Must> kept) {
        return kept.stream()
                .filter(must -> must.club().isPresent() && isOf(option, must))
                .mapToLong(must -> musts.breaks(option, must.measure()))
                .sum();
    }

    private static boolean isOf(Option option, Must must) {
        return !option.isEmpty() && option.club().equals(must.club().orElseThrow());
    }

    /** The musts, other than those kept, that a plan leaves broken. */
    private Set<Must> missed(BagState found, Set<Must> kept) {
        Set<Must> missed = new LinkedHashSet<>();
        for (int slot = 0; slot < bag.slots().size(); slot++) {
            Option option = bag.slots().get(slot).options().get(found.chosen().get(slot));
            for (Measure measure : OwnMusts.MEASURES) {
                if (musts.breaks(option, measure) > 0) {
                    missed.add(new Must(measure, Optional.of(option.club())));
                }
            }
        }
        boolean gaps = aims.of(Measure.GAP).must()
                && found.gaps().stream()
                        .anyMatch(gap -> aims.of(Measure.GAP).hardBreakThousandths(gap.gapM() - gap.wishM()) > 0);
        boolean spreads = aims.of(Measure.SPREAD).must()
                && found.spreads().stream()
                        .anyMatch(spread ->
                                aims.of(Measure.SPREAD).hardBreakThousandths(spread.deviationMeasureUnits()) > 0);
        if (gaps) {
            missed.add(new Must(Measure.GAP, Optional.empty()));
        }
        if (spreads) {
            missed.add(new Must(Measure.SPREAD, Optional.empty()));
        }
        missed.removeAll(kept);
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
