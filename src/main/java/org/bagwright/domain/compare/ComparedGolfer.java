package org.bagwright.domain.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.compare.ComparedField.Value;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Units;

/**
 * One golfer in the books that have him: what each says of him, of his wishes and of his clubs, and what comes of it. All is
 * shown in the units of the first book of the comparison.
 */
public final class ComparedGolfer {
    private final List<ComparedBook> books;
    private final String name;
    private final BookSettings shown;
    private final Units units;

    /** @param all every book of the comparison */
    ComparedGolfer(List<ComparedBook> all, String name) {
        this.books = all.stream().filter(book -> book.bagOf(name).isPresent()).toList();
        this.name = name;
        this.shown = all.get(0).result().book().settings();
        this.units = shown.units();
    }

    /** The names of the books that have him, in their order: what the values of all fields belong to. */
    public List<String> books() {
        return books.stream().map(ComparedBook::name).toList();
    }

    /** Whether nothing differs, neither what the books say nor what comes of it. */
    public boolean isSame() {
        return Stream.of(conditions(), wishes(), points(BagResult::today), points(BagResult::planned))
                        .flatMap(List::stream)
                        .noneMatch(ComparedField::differs)
                && clubs().stream().noneMatch(ComparedClub::differs);
    }

    /** What the books say of the golfer himself, of air and ball, and of the pieces on the bench. */
    public List<ComparedField> conditions() {
        return ComparedField.of(books.stream().map(this::conditions).toList());
    }

    private Map<String, Value> conditions(ComparedBook book) {
        Map<String, Value> fields = golfer(book);
        fields.keySet().removeAll(golferWishes(book).keySet());
        BookSettings settings = book.result().book().settings();
        fields.putAll(new RecordFields(units).add(settings).fields());
        fields.put("unit of distance", new Value(settings.units().distance().label(), ""));
        fields.put("unit of speed", new Value(settings.units().speed().label(), ""));
        fields.put("unit of length", new Value(settings.units().length().label(), ""));
        List<String> stock = book.result().book().stock().stream()
                .map(item -> item.count() + " " + item.inWords())
                .toList();
        fields.put("stock", new Value(String.join(", ", stock), ""));
        return fields;
    }

    private Map<String, Value> golfer(ComparedBook book) {
        return new RecordFields(units).add(bag(book).golfer()).fields();
    }

    private Map<String, Value> golferWishes(ComparedBook book) {
        Golfer golfer = bag(book).golfer();
        Set<String> notWished = Set.of("hand", "speeds", "address");
        return new RecordFields(units).add(golfer, notWished).fields();
    }

    /** What the golfer and the fitter wish: points of books that differ in this do not compare one to one. */
    public List<ComparedField> wishes() {
        return ComparedField.of(books.stream().map(this::wishes).toList());
    }

    private Map<String, Value> wishes(ComparedBook book) {
        Map<String, Value> fields = golferWishes(book);
        for (Measure measure : Measure.values()) {
            addAim(fields, book.result().book(), measure);
        }
        for (ComparedClub compared : clubs()) {
            Optional<Club> club = club(book, compared.club()).club();
            if (compared.missingIn().isEmpty() && club.isPresent()) {
                RecordFields wished = new RecordFields(units)
                        .add(club.get().freedom())
                        .add(club.get().targets());
                fields.putAll(ComparedField.of(compared.club(), wished.fields()));
            }
        }
        return fields;
    }

    private void addAim(Map<String, Value> fields, Book book, Measure measure) {
        Aim aim = book.aims().of(measure);
        double tolerance = measure.unit().shown(aim.toleranceMeasureUnits(), shown);
        fields.put(
                measure.label() + " tolerance",
                new Value(Numbers.trimmed(tolerance), measure.unit().label(shown)));
        fields.put(measure.label() + " importance", new Value(Numbers.trimmed(aim.importancePoints()), ""));
        fields.put(measure.label() + " must", new Value(aim.must() ? "yes" : "no", ""));
    }

    /** The penalty of a state in all and by measure, points. */
    public List<ComparedField> points(Function<BagResult, BagState> state) {
        return ComparedField.of(books.stream()
                .map(book -> points(bag(book), state.apply(bag(book))))
                .toList());
    }

    private static Map<String, Value> points(BagResult bag, BagState state) {
        Map<String, Value> fields = new LinkedHashMap<>();
        fields.put("in all", new Value(Numbers.fixed(state.score().penaltyPoints(), 2), ""));
        for (Measure measure : Measure.values()) {
            fields.put(measure.label(), new Value(Numbers.fixed(bag.terms(state).points(measure), 2), ""));
        }
        return fields;
    }

    /** Every club that a book has of him, in the order of the bag; a club is known by its name. */
    public List<ComparedClub> clubs() {
        List<String> names = new ArrayList<>();
        books.forEach(book -> book.result().book().bagOf(bag(book).golfer()).stream()
                .map(Club::name)
                .filter(club -> names.stream().noneMatch(club::equalsIgnoreCase))
                .forEach(names::add));
        return names.stream().map(this::club).toList();
    }

    private ComparedClub club(String club) {
        List<ClubOfBook> clubs = books.stream().map(book -> club(book, club)).toList();
        return ComparedClub.of(club, books(), clubs);
    }

    private ClubOfBook club(ComparedBook book, String club) {
        return new ClubOfBook(book.result().book(), bag(book), club, units);
    }

    private BagResult bag(ComparedBook book) {
        return book.bagOf(name).orElseThrow();
    }
}
