package org.bagwright.planning.outlook;

import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.CarryOrigin;
import org.bagwright.domain.option.ExpectedShot;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.CarryBand;
import org.bagwright.domain.plan.GapOutlook;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.Sensitivity;
import org.bagwright.flight.golfer.GolferFlight;
import org.bagwright.planning.options.BagMaker;
import org.bagwright.planning.sureness.BagSureness;

/** Works out how planned bags answer to small changes, how sure they are, and what to measure next. */
public final class Outlooks {
    private final Book book;
    private final BagMaker maker;
    private final long seed;

    /**
     * @param maker fits the golfers of the book
     * @param seed of the draws
     */
    public Outlooks(Book book, BagMaker maker, long seed) {
        this.book = book;
        this.maker = maker;
        this.seed = seed;
    }

    /** The bag with its outlook. */
    public BagResult with(BagResult bag) {
        List<Option> planned = bag.optionsOf(bag.planned());
        List<Integer> carrying = IntStream.range(0, planned.size())
                .filter(index -> planned.get(index).carryM().isPresent())
                .boxed()
                .toList();
        GolferFlight flight = maker.flight(bag.golfer());
        List<Sensitivity> answers = carrying.stream()
                .map(planned::get)
                .map(option -> new Sensitivities(flight, option.club()).at(loftDeg(bag, option)))
                .toList();
        List<CarryBand> bands =
                carrying.stream().map(index -> band(bag, flight, index)).toList();
        BagSureness sureness = new BagSureness(bag.options(), bag.planned().chosen());
        return bag.withOutlook(new BagOutlook(
                answers, bands, gaps(bag, planned), sureness.choices(seed), sureness.measureNext(this::isGauged)));
    }

    private boolean isGauged(Club club) {
        return book.readings().stream()
                .anyMatch(reading -> reading.golfer().equalsIgnoreCase(club.golfer())
                        && reading.club().equalsIgnoreCase(club.name()));
    }

    /** What was assumed of how far single shots scatter. */
    public static List<Message> assumptions(BagResult bag) {
        return bag.outlook().orElseThrow().bands().stream().anyMatch(CarryBand::spreadAssumed)
                ? List.of(Message.assumed(
                        bag.golfer().cell(),
                        Wording.ofGolfer(
                                "No shots tell how far single shots scatter, so 3 % of the carry is assumed: ",
                                bag.golfer().name(), "", ".")))
                : List.of();
    }

    private static CarryBand band(BagResult bag, GolferFlight flight, int index) {
        Option option = bag.optionsOf(bag.planned()).get(index);
        Club club = option.club();
        double carryM = option.carryM().orElseThrow();
        double scatterM = flight.carryScatterRatio() * carryM;
        double singleM = CarryBand.EIGHT_OF_TEN * Math.sqrt(option.doubt().varianceM2() + scatterM * scatterM);
        ExpectedShot expected = option.setup().orElseThrow().expected().orElseThrow();
        return new CarryBand(
                club.slot(),
                club.name(),
                Math.max(0, carryM - singleM),
                Math.max(0, carryM + singleM),
                scatterM,
                expected.origin() == CarryOrigin.ASSUMED,
                new CarryBand.Average(
                        Math.sqrt(option.doubt().varianceM2()),
                        bag.options().slots().get(index).changeSdM(option),
                        expected.origin(),
                        expected.extended()));
    }

    private List<GapOutlook> gaps(BagResult bag, List<Option> planned) {
        double toleranceM = book.aims().of(Measure.GAP).toleranceMeasureUnits();
        return bag.planned().gaps().stream()
                .map(gap -> gap(gap, planned.get(gap.fromIndex()), planned.get(gap.toIndex()), toleranceM))
                .toList();
    }

    private static GapOutlook gap(GapTerm gap, Option from, Option to, double toleranceM) {
        GoodGap good = GoodGap.after(from, gap.wishM(), toleranceM);
        double sdM = Math.sqrt(from.doubt().gapVarianceM2(to.doubt()));
        return new GapOutlook(
                gap.fromIndex(), gap.toIndex(), good.leastM(), good.mostM(), good.chanceRatio(gap.gapM(), sdM), sdM);
    }

    private static double loftDeg(BagResult bag, Option option) {
        return option.pose().presentedLoftDeg(bag.golfer());
    }
}
