package org.bagwright.planning.options;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Matching;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.ClosedReason;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.ExpectedShot;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.StockLimit;
import org.bagwright.domain.option.Terms;
import org.bagwright.flight.golfer.GolferFlight;

/** Computes every option of a club once, before anything is searched. */
public final class OptionMaker {
    /** A head that topples this far has no line to tell. */
    private static final double MOST_FACE_DEG = 45;

    private final Golfer golfer;
    private final Aims aims;
    private final Matching matching;
    private final GolferFlight flight;
    private final ClosedReasons closed;
    private final List<StockLimit> stock;

    OptionMaker(Book book, Golfer golfer, GolferFlight flight, List<StockLimit> stock) {
        this.golfer = golfer;
        this.aims = book.aims();
        this.matching = book.settings().matching();
        this.flight = flight;
        this.closed =
                new ClosedReasons(golfer, new EquipmentRules(book.settings().lengthLimitM()));
        this.stock = stock;
    }

    /** Every way to fill a slot: each club that may fill it in every set-up, and nothing where that is allowed. */
    SlotOptions options(List<SlotClub> clubs, SlotPin pin) {
        List<Option> options = new ArrayList<>();
        for (SlotClub club : clubs) {
            options.addAll(options(club, pin));
        }
        if (mayBeEmpty(clubs)) {
            options.add(none(clubs, pin));
        }
        List<Integer> open = IntStream.range(0, options.size())
                .filter(index -> options.get(index).open())
                .boxed()
                .toList();
        int today = IntStream.range(0, options.size())
                .filter(index -> options.get(index).changes() == 0)
                .findFirst()
                .orElseThrow();
        return new SlotOptions(
                clubs.get(0).club().slot(),
                clubs.stream().map(SlotClub::club).toList(),
                options,
                today,
                open.isEmpty() ? List.of(today) : open);
    }

    private static boolean mayBeEmpty(List<SlotClub> clubs) {
        return clubs.stream().anyMatch(club -> club.club().freedom().optional())
                || clubs.stream().noneMatch(club -> club.club().inBag());
    }

    private Option none(List<SlotClub> clubs, SlotPin pin) {
        Club first = clubs.get(0).club();
        int changes = clubs.stream().anyMatch(club -> club.club().inBag()) ? 1 : 0;
        return new Option(
                Option.keyOfNone(first.golfer(), first.slot()),
                Optional.empty(),
                changes,
                Terms.of(aims.of(Measure.CHANGE), changes),
                pin.allowsNone() ? Set.of() : Set.of(ClosedReason.PIN),
                stock.stream().map(limit -> 0).toList());
    }

    private List<Option> options(SlotClub club, SlotPin pin) {
        List<Option> options = new ArrayList<>();
        Map<Choice, PoseNumbers> poses = new HashMap<>();
        Map<Presented, ExpectedShot> flown = new HashMap<>();
        for (Choice choice : club.choices()) {
            Choice form = new Choice(choice.setting(), choice.bend());
            PoseNumbers pose = poses.computeIfAbsent(form, club.geometry()::pose);
            options.add(option(club, choice, pose, flown, pin));
        }
        return options;
    }

    /** One option by itself. */
    Option option(SlotClub club, Choice choice, SlotPin pin) {
        PoseNumbers pose = club.geometry().pose(new Choice(choice.setting(), choice.bend()));
        return option(club, choice, pose, new HashMap<>(), pin);
    }

    private Option option(
            SlotClub slotClub, Choice choice, PoseNumbers pose, Map<Presented, ExpectedShot> flown, SlotPin pin) {
        Club club = slotClub.club();
        Optional<ExpectedShot> shot = club.kind().carries()
                ? Optional.of(flown.computeIfAbsent(
                        new Presented(pose.presentedLoftDeg(golfer), pose.presentedFaceDeg(golfer), choice.weighting()),
                        presented -> shot(slotClub, presented)))
                : Optional.empty();
        int changes = (club.inBag() ? 0 : 1) + choice.itemsThatDiffer(club.tidiedToday());
        Optional<Weighting> weighting = slotClub.weighting(choice);
        BuildNumbers build = slotClub.build(weighting);
        ClubSetup setup = new ClubSetup(
                club,
                slotClub.wishes(),
                choice,
                pose,
                pose.presentedFaceDeg(golfer),
                shot,
                build,
                matchValue(club, build));
        return new Option(
                Option.keyOf(club, choice),
                Optional.of(setup),
                changes,
                terms(setup, changes),
                closed.of(setup, pin),
                stock.stream()
                        .map(limit -> limit.item().takenBy(club, weighting))
                        .toList());
    }

    private Optional<MatchValue> matchValue(Club club, BuildNumbers build) {
        return matching.groupOf(club.kind())
                .map(group -> new MatchValue(
                        group,
                        matching.by() == Matching.By.SWINGWEIGHT
                                ? build.swingweight().scalePoints()
                                : build.clubInertiaKgCm2()));
    }

    /** What a club presents to the ball, degrees, the face closed positive. */
    private record Presented(double loftDeg, double faceDeg, Optional<String> weighting) {}

    /**
     * The line of a face that does not point at the target; the carry stays that of the square blow, since the shots that it
     * was set by were measured along their own line too.
     */
    private ExpectedShot shot(SlotClub slotClub, Presented presented) {
        ShotPrediction square = slotClub.shot(flight, presented.loftDeg(), 0, presented.weighting());
        if (Math.abs(presented.faceDeg()) > MOST_FACE_DEG) {
            return expected(slotClub, presented, square);
        }
        ShotPrediction aimed = slotClub.shot(flight, presented.loftDeg(), presented.faceDeg(), presented.weighting());
        return expected(slotClub, presented, square.onLine(aimed.startClosedDeg(), aimed.sidewaysClosedM()));
    }

    private ExpectedShot expected(SlotClub slotClub, Presented presented, ShotPrediction shot) {
        Club club = slotClub.club();
        CarryDoubt doubt = flight.doubt(
                club, presented.loftDeg(), slotClub.weightedAsOtherThanToday(presented.weighting()));
        return new ExpectedShot(shot, doubt, flight.origin(club, presented.loftDeg()), flight.extended(shot));
    }

    private Terms terms(ClubSetup setup, int changes) {
        Map<Measure, Double> deviations = setup.deviations();
        deviations.put(Measure.CHANGE, (double) changes);
        return setup.withLimits(Terms.of(aims, deviations), aims);
    }
}
