package org.bagwright.planning.options;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Matching;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Bend;
import org.bagwright.domain.club.BendRange;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.ClosedReason;
import org.bagwright.domain.option.ClubSetup;
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
    private static final double SAME_TURN_DEG = 1e-6;
    /** A head that topples this far has no line to tell. */
    private static final double MOST_FACE_DEG = 45;

    private final Golfer golfer;
    private final Aims aims;
    private final Matching matching;
    private final GolferFlight flight;
    private final EquipmentRules rules;
    private final List<StockLimit> stock;

    OptionMaker(Book book, Golfer golfer, GolferFlight flight, List<StockLimit> stock) {
        this.golfer = golfer;
        this.aims = book.aims();
        this.matching = book.settings().matching();
        this.flight = flight;
        this.rules = new EquipmentRules(book.settings().lengthLimitM());
        this.stock = stock;
    }

    /** The choice that a club has today, with bends rounded as those of its options are. */
    public static Choice tidiedToday(Club club) {
        Choice today = club.today();
        return new Choice(today.setting(), today.weighting(), tidied(today.bend()));
    }

    /** The loft that a club presents to the ball: squared by the golfer, or as the head sits. */
    public static double presentedLoftDeg(Golfer golfer, PoseNumbers pose) {
        return golfer.address().squaresFace()
                ? pose.address().loftDeg()
                : pose.resting().loftDeg();
    }

    /** The heading of the face at the ball, closed positive: squared by the golfer, or as the head sits. */
    static double presentedFaceDeg(Golfer golfer, PoseNumbers pose) {
        return golfer.address().squaresFace() ? pose.address().faceHeadingDeg() : pose.sitsClosedDeg();
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
        Map<Presented, ShotPrediction> flown = new HashMap<>();
        for (Choice choice : choices(club)) {
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

    /** Every combination of setting, weighting, loft bend and lie bend that the row allows, and today's. */
    static Set<Choice> choices(SlotClub slotClub) {
        Club club = slotClub.club();
        List<Optional<String>> settings = orNone(slotClub.sleeve().map(Sleeve::settings), SleeveSetting::mark);
        List<Optional<String>> weightings = orNone(slotClub.kit().map(Kit::weightings), Weighting::name);
        Set<Choice> choices = new LinkedHashSet<>();
        for (Optional<String> setting : settings) {
            for (Optional<String> weighting : weightings) {
                for (double loftDeg :
                        bendsDeg(club.freedom().bendRange(), club.today().bend().loftDeg())) {
                    for (double lieDeg : bendsDeg(
                            club.freedom().bendRange(), club.today().bend().lieDeg())) {
                        choices.add(new Choice(setting, weighting, new Bend(loftDeg, lieDeg)));
                    }
                }
            }
        }
        return choices;
    }

    /** The names of what there is, or a single none. */
    private static <T> List<Optional<String>> orNone(Optional<List<T>> known, Function<T, String> name) {
        return known.map(list -> list.stream().map(name).map(Optional::of).toList())
                .orElse(List.of(Optional.empty()));
    }

    private static Set<Double> bendsDeg(BendRange range, double todayDeg) {
        Set<Double> bends = new TreeSet<>();
        bends.add(tidy(todayDeg));
        int steps = (int) Math.floor(range.limitDeg() / range.stepDeg() + 1e-9);
        for (int step = -steps; step <= steps && range.limitDeg() > 0; step++) {
            bends.add(tidy(step * range.stepDeg()));
        }
        return bends;
    }

    /** Four decimals and no negative zero, so that a bend typed by hand equals the computed one. */
    private static double tidy(double valueDeg) {
        return BigDecimal.valueOf(valueDeg).setScale(4, RoundingMode.HALF_UP).doubleValue() + 0.0;
    }

    private Option option(
            SlotClub slotClub, Choice choice, PoseNumbers pose, Map<Presented, ShotPrediction> flown, SlotPin pin) {
        Club club = slotClub.club();
        Optional<ShotPrediction> shot = club.kind().carries()
                ? Optional.of(flown.computeIfAbsent(
                        new Presented(
                                presentedLoftDeg(golfer, pose), presentedFaceDeg(golfer, pose), choice.weighting()),
                        presented -> shot(slotClub, presented)))
                : Optional.empty();
        int changes = (club.inBag() ? 0 : 1) + choice.itemsThatDiffer(tidiedToday(club));
        Optional<Weighting> weighting = slotClub.weighting(choice);
        BuildNumbers build = slotClub.build(weighting);
        ClubSetup setup = new ClubSetup(
                club,
                slotClub.wishes(),
                choice,
                pose,
                presentedFaceDeg(golfer, pose),
                shot,
                build,
                matchValue(club, build));
        return new Option(
                Option.keyOf(club, choice),
                Optional.of(setup),
                changes,
                terms(setup, changes),
                barriers(setup, pin),
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
    private ShotPrediction shot(SlotClub slotClub, Presented presented) {
        ShotPrediction square = slotClub.shot(flight, presented.loftDeg(), 0, presented.weighting());
        if (Math.abs(presented.faceDeg()) > MOST_FACE_DEG) {
            return square;
        }
        ShotPrediction aimed = slotClub.shot(flight, presented.loftDeg(), presented.faceDeg(), presented.weighting());
        return square.onLine(aimed.startClosedDeg(), aimed.sidewaysClosedM());
    }

    private static Bend tidied(Bend bend) {
        return new Bend(tidy(bend.loftDeg()), tidy(bend.lieDeg()));
    }

    private Set<ClosedReason> barriers(ClubSetup setup, SlotPin pin) {
        Club club = setup.club();
        boolean held = pin.allows(club, setup.choice());
        Set<ClosedReason> barriers = EnumSet.noneOf(ClosedReason.class);
        addUnless(held, barriers, ClosedReason.PIN);
        if (!held || pin.isFree()) {
            addUnless(isAllowed(club, setup.choice()), barriers, ClosedReason.SETTING);
            addUnless(!golfer.address().keepsShaftAligned() || !turnsShaft(setup), barriers, ClosedReason.SHAFT);
            addUnless(rules.allow(setup), barriers, ClosedReason.RULE);
        }
        return barriers;
    }

    private static void addUnless(boolean free, Set<ClosedReason> barriers, ClosedReason barrier) {
        if (!free) {
            barriers.add(barrier);
        }
    }

    private static boolean isAllowed(Club club, Choice choice) {
        return club.freedom().allowed().isEmpty()
                || choice.setting()
                        .map(mark -> club.freedom().allowed().stream().anyMatch(mark::equalsIgnoreCase))
                        .orElse(true);
    }

    /** Whether it turns the shaft away from the club's setting of today. */
    public static boolean turnsShaft(ClubSetup setup) {
        return Math.abs(setup.pose().shaftTurnDeg()) >= SAME_TURN_DEG;
    }

    private Terms terms(ClubSetup setup, int changes) {
        Map<Measure, Double> deviations = setup.deviations();
        deviations.put(Measure.CHANGE, (double) changes);
        return Terms.of(aims, deviations);
    }
}
