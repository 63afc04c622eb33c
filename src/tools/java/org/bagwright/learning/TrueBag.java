package org.bagwright.learning;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.ExpectedShot;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.search.BagSearch;
import org.bagwright.search.model.SearchLimits;

/**
 * A hidden golfer's bag as the program sees it and as it is, so that a plan made for the one is judged by the other. Nothing
 * but gaps and reach depends on carry here: no club of a hidden golfer has a target or a limit of it.
 */
final class TrueBag {
    private static final SearchLimits LIMITS = new SearchLimits(1, 10);

    private final BagOptions seen;
    private final BagOptions real;

    TrueBag(HiddenGolfer hidden, BagOptions seen) {
        this.seen = seen;
        List<SlotOptions> slots =
                seen.slots().stream().map(slot -> real(hidden, slot)).toList();
        this.real = new BagOptions(seen.golfer(), slots, seen.gapWishM(), guessing(seen.aims(), false));
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
        return planned(
                new BagOptions(seen.golfer(), seen.slots(), seen.gapWishM(), guessing(seen.aims(), onWhatIsLikely)));
    }

    /** The plan of one who knows the truth. */
    List<Integer> bestPlan() {
        return planned(real);
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
        BagOptions bag =
                new BagOptions(seen.golfer(), seen.slots(), seen.gapWishM(), guessing(seen.aims(), onWhatIsLikely));
        return BagSearch.state(bag, chosen).score().penaltyPoints();
    }

    /** What it truly is, points. */
    double truePoints(List<Integer> chosen) {
        return BagSearch.state(real, chosen).score().penaltyPoints();
    }

    List<Integer> today() {
        return seen.today();
    }
}
