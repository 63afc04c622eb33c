package org.bagwright.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.ExpectedShot;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.ChoiceSureness;
import org.bagwright.domain.plan.MeasureNext;
import org.bagwright.planning.sureness.BagSureness;
import org.bagwright.search.BagSearch;
import org.bagwright.search.model.SearchLimits;

/**
 * A hidden golfer's bag as the program sees it and as it is, so that a plan made for the one is judged by the other. Nothing
 * but gaps and reach depends on carry here: no club of a hidden golfer has a target or a limit of it.
 */
final class TrueBag {
    private static final SearchLimits LIMITS = new SearchLimits(1, 10);
    private static final double LEAST_WISH_M = 3;
    private static final double ALIKE_M = 0.1;
    private static final double ALIKE_POINTS = 0.005;

    private final BagOptions seen;
    private final BagOptions real;

    /** A bag with the gaps that the program believes it can have, as a fitter wishes who looks at what he can set. */
    static TrueBag of(HiddenGolfer hidden) {
        BagOptions options = Judgement.options(hidden);
        return new TrueBag(hidden, options, wishesM(options.slots()));
    }

    /** The bag after more shots; what is wished is as it was. */
    TrueBag after(HiddenGolfer more) {
        return new TrueBag(more, Judgement.options(more), seen.keptGapsM());
    }

    private TrueBag(HiddenGolfer hidden, BagOptions options, Map<Integer, Double> wishesM) {
        List<SlotOptions> slots =
                options.slots().stream().map(slot -> real(hidden, slot)).toList();
        this.seen = new BagOptions(options.golfer(), options.slots(), options.gapWishM(), wishesM, options.aims());
        this.real =
                new BagOptions(options.golfer(), slots, options.gapWishM(), wishesM, guessing(options.aims(), false));
    }

    /** The gaps of a drawn set-up, by what is known before more shots: what is true must not be seen in a wish. */
    private static Map<Integer, Double> wishesM(List<SlotOptions> slots) {
        Dice dice = new Dice(slots.size());
        List<Option> drawn = slots.stream()
                .map(slot -> slot.options().get(dice.below(slot.options().size())))
                .toList();
        Map<Integer, Double> wishesM = new TreeMap<>();
        for (int slot = 0; slot + 1 < drawn.size(); slot++) {
            double gapM = drawn.get(slot).carryM().orElseThrow()
                    - drawn.get(slot + 1).carryM().orElseThrow();
            wishesM.put(slots.get(slot).slot(), Math.max(LEAST_WISH_M, gapM));
        }
        return wishesM;
    }

    private static SlotOptions real(HiddenGolfer hidden, SlotOptions slot) {
        List<Option> options =
                slot.options().stream().map(option -> real(hidden, option)).toList();
        return new SlotOptions(slot.slot(), slot.clubs(), options, slot.todayIndex(), slot.openIndexes());
    }

    private static Option real(HiddenGolfer hidden, Option option) {
        ClubSetup setup = option.setup().orElseThrow();
        ShotPrediction shot = setup.shot().orElseThrow();
        ShotPrediction flown = new ShotPrediction(
                shot.ballSpeedMps(),
                shot.launchDeg(),
                shot.spinRpm(),
                hidden.trueCarryM(option),
                shot.apexM(),
                shot.landingDeg(),
                shot.startClosedDeg(),
                shot.sidewaysClosedM());
        ClubSetup known = new ClubSetup(
                setup.club(),
                setup.wishes(),
                setup.choice(),
                setup.pose(),
                setup.deliveredFaceDeg(),
                Optional.of(ExpectedShot.certain(flown)),
                setup.build(),
                setup.match());
        return new Option(
                option.key(),
                Optional.of(known),
                option.changes(),
                option.terms(),
                option.closedReasons(),
                option.takes());
    }

    private static Aims guessing(Aims aims, boolean onWhatIsLikely) {
        return aims.mapped(aim -> aim.onWhatIsLikely(onWhatIsLikely));
    }

    /** The plan that the program makes, for what is likely or for its best guess. */
    List<Integer> plan(boolean onWhatIsLikely) {
        return planned(seen(onWhatIsLikely));
    }

    /** The plan of one who knows the truth. */
    List<Integer> bestPlan() {
        return planned(real);
    }

    private BagOptions seen(boolean onWhatIsLikely) {
        return new BagOptions(
                seen.golfer(), seen.slots(), seen.gapWishM(), seen.keptGapsM(), guessing(seen.aims(), onWhatIsLikely));
    }

    private static List<Integer> planned(BagOptions bag) {
        return new BagSearch(LIMITS)
                .plan(new BookOptions(List.of(bag), List.of()))
                .bags()
                .get(0)
                .chosen();
    }

    /** What a plan's penalty is said to be, points. */
    double promisedPoints(List<Integer> chosen, boolean onWhatIsLikely) {
        return BagSearch.state(seen(onWhatIsLikely), chosen).score().penaltyPoints();
    }

    /** What it truly is, points. */
    double truePoints(List<Integer> chosen) {
        return BagSearch.state(real, chosen).score().penaltyPoints();
    }

    /** What the program advises to measure next. */
    Optional<MeasureNext.Advice> advice(List<Integer> planned) {
        return new BagSureness(seen(true), planned).measureNext(club -> false).first();
    }

    /** Each share of likely cases that is stated of an option, and whether that option is one of the best plan. */
    List<Chances.Chance> shares(List<Integer> planned) {
        List<Integer> best = bestPlan();
        List<Chances.Chance> shares = new ArrayList<>();
        for (ChoiceSureness sure : new BagSureness(seen(true), planned).choices(1)) {
            SlotOptions slot = real.slots().get(sure.index());
            Option chosen = slot.options().get(best.get(sure.index()));
            if (slot.options().size() > 1) {
                sure.best().stream()
                        .map(share -> new Chances.Chance(
                                share.caseRatio(), alike(slot.options().get(share.option()), chosen)))
                        .forEach(shares::add);
            }
        }
        return shares;
    }

    /** Whether a fitter could not tell two options of a club from each other. */
    private static boolean alike(Option one, Option other) {
        return Math.abs(one.carryM().orElseThrow() - other.carryM().orElseThrow()) < ALIKE_M
                && Math.abs(one.terms().totalPoints() - other.terms().totalPoints()) < ALIKE_POINTS;
    }

    List<Integer> today() {
        return seen.today();
    }
}
