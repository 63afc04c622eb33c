package org.bagwright.planning.outlook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.ClubKind;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.WantedRange;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.CarryBand;
import org.bagwright.domain.plan.GapOutlook;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.Sensitivity;
import org.bagwright.domain.text.Numbers;
import org.bagwright.flight.golfer.GolferFlight;
import org.bagwright.flight.golfer.ShotSpread;

/** Works out how planned bags answer to small changes and how sure they are. */
public final class Outlooks {
    private final Book book;
    private final long seed;

    public Outlooks(Book book, long seed) {
        this.book = book;
        this.seed = seed;
    }

    /** The bag with its outlook. */
    public BagResult with(BagResult bag) {
        List<Option> planned = bag.optionsOf(bag.planned());
        List<Integer> carrying = IntStream.range(0, planned.size())
                .filter(index -> planned.get(index).carryM().isPresent())
                .boxed()
                .toList();
        GolferFlight flight = fit(bag, book.settings());
        List<Sensitivity> answers = carrying.stream()
                .map(planned::get)
                .map(option -> new Sensitivities(flight, option.club()).at(loftDeg(bag, option)))
                .toList();
        List<Spreads> spreads = new ArrayList<>();
        List<Uncertain> uncertain = new ArrayList<>();
        for (int place = 0; place < answers.size(); place++) {
            Club club = planned.get(carrying.get(place)).club();
            Sensitivity answer = answers.get(place);
            spreads.add(Spreads.of(club, book.shots(), answer.carryM()));
            uncertain.add(uncertain(answer, spreads.get(place), flight.headSpeedMps(club)));
        }
        CarryDraws draws = new CarryDraws(uncertain, Spreads.DAY_SPEED_RATIO, seed);
        return bag.withOutlook(new BagOutlook(
                answers,
                bands(answers, spreads, draws),
                gaps(bag, carrying, planned, draws),
                book.settings().ballModel().other()));
    }

    /** What was assumed where it was worked out how certain a bag's gaps are. */
    public static List<Message> assumptions(BagResult bag) {
        BagOutlook outlook = bag.outlook().orElseThrow();
        if (outlook.clubs().isEmpty()) {
            return List.of();
        }
        List<Message> messages = new ArrayList<>();
        messages.add(Message.assumed(
                bag.golfer().cell(),
                "How certain the gaps are depends on assumed spreads (standard deviations): "
                        + Numbers.trimmed(Spreads.GAUGE_DEG) + " degrees of loft for gauge and setting, "
                        + percent(Spreads.DAY_SPEED_RATIO) + " of head speed from day to day, at most "
                        + percent(Spreads.UNTOLD_AVERAGE_RATIO)
                        + " of the carry for an average of few or no shots."));
        Map<String, Club> clubs = new LinkedHashMap<>();
        bag.optionsOf(bag.planned()).stream()
                .filter(option -> !option.isEmpty())
                .map(Option::club)
                .forEach(club -> clubs.put(club.name(), club));
        outlook.bands().stream()
                .filter(CarryBand::spreadAssumed)
                .map(band -> clubs.get(band.club()))
                .forEach(club -> messages.add(fewShots(club)));
        return messages;
    }

    private static Message fewShots(Club club) {
        String lead = "With fewer than " + ShotSpread.ENOUGH + " shots, single shots are assumed to scatter by "
                + percent(Spreads.assumedRatio(ClubKind.DRIVER)) + " of the carry for driver and irons and "
                + percent(Spreads.assumedRatio(ClubKind.WEDGE)) + " for the others: ";
        return Message.assumed(club.cell(), Wording.ofClub(lead, club.golfer(), club.name(), "", "."));
    }

    private static String percent(double ratio) {
        return Numbers.trimmed(100 * ratio, 1) + " %";
    }

    private static Uncertain uncertain(Sensitivity answer, Spreads spread, double headSpeedMps) {
        return new Uncertain(
                answer.carryM(),
                answer.carryPerLoftDegM(),
                answer.carryPerHeadMpsM() * headSpeedMps,
                Spreads.GAUGE_DEG,
                spread.averageM(),
                spread.shotM());
    }

    private static List<CarryBand> bands(List<Sensitivity> clubs, List<Spreads> spreads, CarryDraws draws) {
        List<CarryBand> bands = new ArrayList<>();
        for (int place = 0; place < clubs.size(); place++) {
            bands.add(new CarryBand(
                    clubs.get(place).slot(),
                    clubs.get(place).club(),
                    Math.max(0, draws.lowM(place)),
                    Math.max(0, draws.highM(place)),
                    spreads.get(place).shotM(),
                    spreads.get(place).assumed()));
        }
        return bands;
    }

    private List<GapOutlook> gaps(BagResult bag, List<Integer> carrying, List<Option> planned, CarryDraws draws) {
        GolferFlight other = fit(
                bag, book.settings().withBallModel(book.settings().ballModel().other()));
        Map<Integer, Double> otherM = carrying.stream().collect(Collectors.toMap(index -> index, index -> other.predict(
                        planned.get(index).club(), loftDeg(bag, planned.get(index)))
                .carryM()));
        double toleranceM = book.aims().of(Measure.GAP).toleranceMeasureUnits();
        List<GapOutlook> gaps = new ArrayList<>();
        for (GapTerm gap : bag.planned().gaps()) {
            Limits limits = Limits.of(planned.get(gap.fromIndex()), gap.wishM(), toleranceM);
            gaps.add(new GapOutlook(
                    gap.fromIndex(),
                    gap.toIndex(),
                    limits.leastM(),
                    limits.mostM(),
                    draws.chanceRatio(
                            carrying.indexOf(gap.fromIndex()),
                            carrying.indexOf(gap.toIndex()),
                            limits.leastM(),
                            limits.mostM()),
                    otherM.get(gap.fromIndex()) - otherM.get(gap.toIndex()) - gap.gapM()));
        }
        return gaps;
    }

    private GolferFlight fit(BagResult bag, BookSettings settings) {
        Map<Club, Double> todayDeg = new LinkedHashMap<>();
        for (SlotOptions slot : bag.options().slots()) {
            for (Club club : slot.clubs()) {
                slot.optionsOf(club).stream()
                        .filter(option -> option.choice().itemsThatDiffer(club.today()) == 0)
                        .forEach(option -> todayDeg.put(club, loftDeg(bag, option)));
            }
        }
        return GolferFlight.fit(
                settings,
                bag.golfer(),
                List.copyOf(todayDeg.keySet()),
                (club, choice) -> todayDeg.get(club),
                book.shots().stream()
                        .filter(shot ->
                                shot.golfer().equalsIgnoreCase(bag.golfer().name()))
                        .toList());
    }

    private static double loftDeg(BagResult bag, Option option) {
        return option.pose().presentedLoftDeg(bag.golfer());
    }

    /**
     * Inside which a gap is good: the limits that the book states, if any, else the wish and a tolerance to each side.
     *
     * @param leastM the least good gap, m
     * @param mostM the greatest good gap, m
     */
    record Limits(double leastM, double mostM) {
        static Limits of(Option from, double wishM, double toleranceM) {
            WantedRange stated = from.gapLimitsM();
            return stated.equals(WantedRange.ANY)
                    ? new Limits(wishM - toleranceM, wishM + toleranceM)
                    : new Limits(stated.leastMeasureUnits(), stated.mostMeasureUnits());
        }
    }
}
