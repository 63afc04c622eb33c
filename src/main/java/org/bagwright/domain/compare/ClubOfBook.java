package org.bagwright.domain.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.compare.ComparedField.Value;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.plan.CarryBand;
import org.bagwright.domain.plan.GapTerm;
import org.bagwright.domain.plan.OptionChange;
import org.bagwright.domain.session.ClubSession;
import org.bagwright.domain.session.Forecast;
import org.bagwright.domain.session.ShotFigure;
import org.bagwright.domain.session.Summary;
import org.bagwright.domain.units.Units;

/** What one book says of one club of a golfer, and what the club does in his bag. */
final class ClubOfBook {
    private static final String LAST_SESSION = "last session";
    private static final Set<String> WISHES = Set.of("freedom", "targets");

    private final Book book;
    private final BagResult bag;
    private final String name;
    private final Units units;

    /** @param units the units in which it is shown */
    ClubOfBook(Book book, BagResult bag, String name, Units units) {
        this.book = book;
        this.bag = bag;
        this.name = name;
        this.units = units;
    }

    /** The row of the sheet Clubs; empty where the book has no such club. */
    Optional<Club> club() {
        return book.bagOf(bag.golfer()).stream()
                .filter(club -> club.name().equalsIgnoreCase(name))
                .findFirst();
    }

    /** Everything that the row says but what is wished of the club. */
    Map<String, Value> setUp() {
        return club().map(club -> new RecordFields(units).add(club, WISHES).fields())
                .orElse(Map.of());
    }

    /** The settings of its sleeve as a text; empty without a sleeve. */
    String sleeveTable() {
        return club().flatMap(book::sleeveOf)
                .map(sleeve -> sleeve.settings().toString())
                .orElse("");
    }

    /** The weightings of its kit as a text; empty without a kit. */
    String kitTable() {
        return club().flatMap(book::kitOf)
                .map(kit -> kit.weightings().toString())
                .orElse("");
    }

    /** What it does in today's bag, and how it was hit. */
    Map<String, Value> today() {
        Map<String, Value> fields = new LinkedHashMap<>();
        flight(fields, bag.today());
        speed(fields, "head speed", mean(Shot.Measured::headSpeedMps));
        fields.put("shots", new Value(String.valueOf(shots().size()), ""));
        ComparedField.put(fields, "launch of shots", "deg", mean(Shot.Measured::launchDeg));
        ComparedField.put(fields, "spin of shots", "rpm", mean(Shot.Measured::spinRpm));
        speed(fields, "ball speed of shots", mean(Shot.Measured::ballSpeedMps));
        ComparedField.put(fields, "attack of shots", "deg", mean(Shot.Measured::attackDeg));
        distance(fields, "carry of shots", mean(Shot.Measured::carryM));
        return fields;
    }

    /** How it is set, and what it does, in the planned bag; how far its single shots spread is known of no other. */
    Map<String, Value> planned() {
        Map<String, Value> fields = new LinkedHashMap<>();
        Optional<Option> option = option(bag.planned());
        fields.put("in the plan", new Value(option.isPresent() ? "yes" : "no", ""));
        choice(fields, option.map(Option::choice));
        flight(fields, bag.planned());
        distance(
                fields,
                "spread of shots",
                band().stream().mapToDouble(CarryBand::spreadM).findFirst());
        fields.put(
                "spread is assumed",
                new Value(
                        band().map(band -> band.spreadAssumed() ? "yes" : "no").orElse(""), ""));
        return fields;
    }

    /** What was hit with it on the last day and on each day, what was predicted, and how it came out. */
    Map<String, Value> sessions() {
        List<ClubSession> own = bag.sessions().stream()
                .filter(session -> session.club().name().equalsIgnoreCase(name))
                .toList();
        Map<String, Value> fields = new LinkedHashMap<>();
        if (!own.isEmpty()) {
            ClubSession last = own.get(own.size() - 1);
            fields.put(LAST_SESSION, new Value(when(last), ""));
            session(fields, LAST_SESSION, last);
        }
        own.forEach(session -> session(fields, when(session), session));
        return fields;
    }

    private String when(ClubSession session) {
        String setUp = session.setUpInWords(units.length());
        return session.date().map(String::valueOf).orElse("no date") + (setUp.isEmpty() ? "" : ", " + setUp);
    }

    private void session(Map<String, Value> fields, String when, ClubSession session) {
        fields.put(when + ": shots", new Value(String.valueOf(session.count()), ""));
        distance(fields, when + ": predicted", of(session.forecast(), Forecast::predictedM));
        distance(fields, when + ": carry", of(session.summary(ShotFigure.CARRY), Summary::meanMeasureUnits));
        fields.put(when + ": came out", new Value(session.inWords(units.distance()), ""));
    }

    private static void choice(Map<String, Value> fields, Optional<Choice> choice) {
        fields.put("setting", new Value(choice.flatMap(Choice::setting).orElse(""), ""));
        fields.put("weighting", new Value(choice.flatMap(Choice::weighting).orElse(""), ""));
        fields.put(
                "loft bend",
                new Value(
                        choice.map(set -> OptionChange.bendText(set.bend().loftDeg()))
                                .orElse(""),
                        "deg"));
        fields.put(
                "lie bend",
                new Value(
                        choice.map(set -> OptionChange.bendText(set.bend().lieDeg()))
                                .orElse(""),
                        "deg"));
    }

    private void flight(Map<String, Value> fields, BagState state) {
        Optional<Option> option = option(state);
        Optional<ShotPrediction> shot = option.flatMap(Option::shot);
        OptionalDouble gapM = index(state).stream()
                .boxed()
                .flatMap(index -> state.gapAfter(index).stream())
                .mapToDouble(GapTerm::gapM)
                .findFirst();
        distance(fields, "carry", of(shot, ShotPrediction::carryM));
        distance(fields, "gap", gapM);
        speed(fields, "ball speed", of(shot, ShotPrediction::ballSpeedMps));
        ComparedField.put(fields, "landing", "deg", of(shot, ShotPrediction::landingDeg));
        ComparedField.put(
                fields, "gauge loft", "deg", of(option, found -> found.pose().gaugeLoftDeg()));
        ComparedField.put(
                fields, "gauge lie", "deg", of(option, found -> found.pose().gaugeLieDeg()));
        fields.put(
                "sits", new Value(option.map(found -> found.pose().sitsText()).orElse(""), ""));
        fields.put(
                "swingweight",
                new Value(
                        option.map(found -> found.build().swingweight().text()).orElse(""), ""));
    }

    private static <T> OptionalDouble of(Optional<T> held, Function<T, Double> value) {
        return held.stream().mapToDouble(value::apply).findFirst();
    }

    private void distance(Map<String, Value> fields, String what, OptionalDouble valueM) {
        ComparedField.put(fields, what, units.distance().label(), of(boxed(valueM), units.distance()::fromM));
    }

    private void speed(Map<String, Value> fields, String what, OptionalDouble valueMps) {
        ComparedField.put(fields, what, units.speed().label(), of(boxed(valueMps), units.speed()::fromMps));
    }

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private Optional<Option> option(BagState state) {
        return index(state).stream()
                .mapToObj(index -> bag.optionsOf(state).get(index))
                .findFirst();
    }

    private OptionalInt index(BagState state) {
        List<Option> options = bag.optionsOf(state);
        return IntStream.range(0, options.size())
                .filter(index -> !options.get(index).isEmpty())
                .filter(index -> options.get(index).club().name().equalsIgnoreCase(name))
                .findFirst();
    }

    private Optional<CarryBand> band() {
        return bag.outlook().stream()
                .flatMap(outlook -> outlook.bands().stream())
                .filter(band -> band.club().equalsIgnoreCase(name))
                .findFirst();
    }

    private List<Shot> shots() {
        return book.shots().stream()
                .filter(shot -> shot.golfer().equalsIgnoreCase(bag.golfer().name()))
                .filter(shot -> shot.club().equalsIgnoreCase(name))
                .toList();
    }

    private OptionalDouble mean(Function<Shot.Measured, OptionalDouble> value) {
        return shots().stream()
                .map(Shot::measured)
                .map(value)
                .flatMapToDouble(OptionalDouble::stream)
                .average();
    }
}
