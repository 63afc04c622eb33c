package org.bagwright.domain.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.StatedLimit;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.option.WantedRange;
import org.bagwright.domain.text.Numbers;

/** Names what a state of a bag breaks: club by club, then what holds for the whole bag. */
final class BrokenRules {
    private final BagResult bag;
    private final BagState state;
    private final BookSettings settings;
    private final List<Option> options;
    private final List<Broken> found = new ArrayList<>();

    BrokenRules(BagResult bag, BagState state, BookSettings settings) {
        this.bag = bag;
        this.state = state;
        this.settings = settings;
        this.options = bag.optionsOf(state);
    }

    List<Broken> all() {
        for (int index = 0; index < options.size(); index++) {
            Option option = options.get(index);
            closed(index, option);
            int place = index;
            option.setup().ifPresent(setup -> club(place, setup));
        }
        mostChanges();
        mostClubs();
        return found;
    }

    private Broken.Place place(int index) {
        int slot = bag.options().slots().get(index).slot();
        return new Broken.Place(
                bag.golfer().name(),
                OptionalInt.of(index),
                OptionalInt.of(slot),
                options.get(index).clubText());
    }

    private void closed(int index, Option option) {
        option.closedReasons().stream()
                .sorted()
                .forEach(reason -> found.add(new Broken(
                        place(index),
                        Broken.Kind.CLOSED,
                        reason.label(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        chosen(option) + " may not be planned (" + reason.label() + ")",
                        bag.options().slots().get(index).main().cell())));
    }

    private static String chosen(Option option) {
        String setting = option.setup()
                .flatMap(setup -> setup.choice().setting())
                .map(mark -> ", setting " + mark + ",")
                .orElse("");
        return option.clubText() + setting;
    }

    private void club(int index, ClubSetup setup) {
        Terms terms = bag.termsAt(state, index);
        terms.brokenLimits().forEach(kind -> limit(index, setup, kind));
        terms.broken().forEach(measure -> must(index, setup, measure));
        state.gapAfter(index).filter(gap -> gap.orderBreaks() > 0).ifPresent(gap -> order(index, gap));
    }

    private void limit(int index, ClubSetup setup, LimitKind kind) {
        StatedLimit limit = setup.wishes().limits().of(kind).orElseThrow();
        LimitWords words = new LimitWords(limit, settings.units().distance());
        double value = kind.quantity() == LimitKind.Quantity.GAP
                ? state.gapAfter(index).orElseThrow().gapM()
                : setup.value(kind).orElseThrow();
        found.add(new Broken(
                place(index),
                Broken.Kind.LIMIT,
                kind.quantity().label(),
                OptionalDouble.of(words.shown(value)),
                OptionalDouble.of(words.shown(limit.valueMeasureUnits())),
                words.broken(
                        kind.quantity() == LimitKind.Quantity.GAP
                                ? pair(index)
                                : setup.club().name(),
                        value),
                limit.cell()));
    }

    private String pair(int index) {
        return options.get(index).clubText() + " to "
                + options.get(state.gapAfter(index).orElseThrow().toIndex()).clubText();
    }

    private void must(int index, ClubSetup setup, Measure measure) {
        Aim aim = bag.options().aims().of(measure);
        String club = setup.club().name();
        switch (measure.scope()) {
            case CLUB ->
                must(
                        index,
                        aim,
                        club + ": " + measure.label(),
                        setup.value(measure).orElseThrow(),
                        setup.wishes().of(measure).orElseThrow());
            case NEIGHBOURS -> {
                GapTerm gap = state.gapAfter(index).orElseThrow();
                must(index, aim, pair(index) + ": gap", gap.gapM(), WantedRange.exactly(gap.wishM()));
            }
            case LONGEST -> {
                ReachTerm reach = state.reachAt(index).orElseThrow();
                WantedRange wanted = new WantedRange(reach.todayM(), Double.POSITIVE_INFINITY);
                must(index, aim, club + ": carry as the longest club", reach.carryM(), wanted);
            }
            case GROUP -> {
                SpreadTerm spread = state.spreadAt(index).orElseThrow();
                String what = club + ": from the mean of its group (" + spread.group() + ")";
                must(index, aim, what, spread.deviationMeasureUnits(), WantedRange.exactly(0));
            }
            case ITEMS -> {}
        }
    }

    /** A value outside what is wanted by more than the tolerance. */
    private void must(int index, Aim aim, String what, double valueMeasureUnits, WantedRange wanted) {
        boolean above = valueMeasureUnits > wanted.mostMeasureUnits();
        double bound = above
                ? wanted.mostMeasureUnits() + aim.toleranceMeasureUnits()
                : wanted.leastMeasureUnits() - aim.toleranceMeasureUnits();
        double figure = aim.measure().unit().shown(valueMeasureUnits, settings);
        double limit = aim.measure().unit().shown(bound, settings);
        String words = what + " " + LimitWords.apart(figure, limit) + " "
                + aim.measure().unit().label(settings) + ", must be at " + (above ? "most " : "least ")
                + Numbers.trimmed(limit, 2);
        found.add(new Broken(
                place(index),
                Broken.Kind.MUST,
                aim.measure().label(),
                OptionalDouble.of(figure),
                OptionalDouble.of(limit),
                words,
                options.get(index).club().cell()));
    }

    private void order(int index, GapTerm gap) {
        double figure = settings.units().distance().fromM(gap.gapM());
        found.add(new Broken(
                place(index),
                Broken.Kind.MUST,
                Broken.ORDER,
                OptionalDouble.of(figure),
                OptionalDouble.of(0),
                pair(index) + ": the carry does not fall from one club to the next (" + Numbers.fixed(figure, 1) + " "
                        + settings.units().distance().label() + ")",
                options.get(index).club().cell()));
    }

    private void mostChanges() {
        int changes = bag.changesOf(state);
        int most = bag.options().mostChanges().orElse(Integer.MAX_VALUE);
        if (changes > most) {
            ofBag("most changes", changes, most, changes + " items changed, at most " + most + " accepted");
        }
    }

    private void mostClubs() {
        int clubs = (int) options.stream().filter(option -> !option.isEmpty()).count();
        if (clubs > BagOptions.MOST_CLUBS) {
            ofBag("number of clubs", clubs, BagOptions.MOST_CLUBS, clubs + " clubs carried, at most 14 in a round");
        }
    }

    private void ofBag(String what, double figure, double limit, String words) {
        found.add(new Broken(
                Broken.Place.ofBag(bag.golfer().name()),
                Broken.Kind.LIMIT,
                what,
                OptionalDouble.of(figure),
                OptionalDouble.of(limit),
                bag.golfer().name() + ": " + words,
                bag.golfer().cell()));
    }
}
