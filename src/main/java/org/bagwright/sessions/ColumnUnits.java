package org.bagwright.sessions;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.session.PlainTable;
import org.bagwright.domain.units.Units;

/** In which unit each column of a file is: as told by its heading, the row below, an option, its neighbour, or the book. */
final class ColumnUnits {
    /**
     * A unit, and what tells it.
     *
     * @param unit the unit
     * @param from what tells it
     */
    record Told(FileUnit unit, String from) {}

    /**
     * Units that a person gives for what a file does not say.
     *
     * @param speed of head and ball
     * @param distance of carry and side
     */
    record Given(Optional<FileUnit> speed, Optional<FileUnit> distance) {
        private boolean confirms(FileUnit used) {
            return speed.filter(used::equals).isPresent()
                    || distance.filter(used::equals).isPresent();
        }
    }

    static final String BY_HEADING = "heading";
    private static final String BY_PERSON = "--column";
    static final String BY_ROW = "row below the headings";

    private final Headings headings;
    private final Given given;
    private final Units book;
    private final boolean hasRow;
    private final Map<ShotField, Told> told = new EnumMap<>(ShotField.class);

    ColumnUnits(Headings headings, Given given, Units book) throws SessionFileException {
        this.headings = headings;
        this.given = given;
        this.book = book;
        List<PlainTable.Row> below = headings.below();
        this.hasRow = !below.isEmpty() && isUnits(below.get(0));
        for (NamedHeading column : headings.named().values()) {
            if (!column.field().units().isEmpty()) {
                ownUnit(column).ifPresent(unit -> told.put(column.field(), unit));
            }
        }
        neighbour(ShotField.SIDE, ShotField.CARRY);
        neighbour(ShotField.CARRY, ShotField.SIDE);
        neighbour(ShotField.HEAD_SPEED, ShotField.BALL_SPEED);
        neighbour(ShotField.BALL_SPEED, ShotField.HEAD_SPEED);
        headings.named().keySet().stream()
                .filter(field -> !field.units().isEmpty() && !told.containsKey(field))
                .forEach(field -> told.put(field, usual(field)));
    }

    /** Whether the row below the headings holds their units. */
    boolean hasRow() {
        return hasRow;
    }

    Told of(ShotField field) {
        return told.get(field);
    }

    /** Whether a person has told this unit, so that only what is wrong by far contradicts it. */
    boolean isConfirmed(ShotField field) {
        return told.get(field).from().equals(BY_PERSON)
                || given.confirms(told.get(field).unit());
    }

    /** Whether a row holds units and no numbers under the headings of numbers. */
    boolean isUnits(PlainTable.Row row) {
        boolean any = false;
        for (NamedHeading column : headings.named().values()) {
            String cell = row.cell(column.index());
            if (column.field().isNumber()
                    && cell.matches(".*\\d.*")
                    && FileUnit.called(bare(cell), column.field().units()).isEmpty()) {
                return false;
            }
            any |= FileUnit.called(bare(cell), column.field().units()).isPresent();
        }
        return any;
    }

    private static String bare(String cell) {
        return cell.replaceAll("^[\\[(]|[\\])]$", "");
    }

    private Optional<Told> ownUnit(NamedHeading column) throws SessionFileException {
        if (column.isUnitGiven()) {
            return column.unit().map(unit -> new Told(unit, BY_PERSON));
        }
        Optional<Told> byHeading = column.unit().map(unit -> new Told(unit, BY_HEADING));
        String below = hasRow ? bare(headings.below().get(0).cell(column.index())) : "";
        if (below.isEmpty() || below.equals("-")) {
            return byHeading.or(() -> byOption(column.field()));
        }
        FileUnit unit = FileUnit.called(below, column.field().units())
                .orElseThrow(() -> headings.wrong("the unit in the row below \""
                        + column.heading().text() + "\" must be one of "
                        + column.field().unitLabels() + ", found \""
                        + below + "\"."));
        if (byHeading.filter(other -> other.unit() != unit).isPresent()) {
            throw headings.wrong("\"" + column.heading().text() + "\" says "
                    + byHeading.get().unit().label() + ", the row below says " + unit.label() + ".");
        }
        return Optional.of(new Told(unit, byHeading.isPresent() ? BY_HEADING : BY_ROW));
    }

    private Optional<Told> byOption(ShotField field) {
        return field.units() == FileUnit.SPEEDS
                ? given.speed().map(unit -> new Told(unit, "--speed"))
                : field.units() == FileUnit.DISTANCES
                        ? given.distance().map(unit -> new Told(unit, "--distance"))
                        : Optional.empty();
    }

    private void neighbour(ShotField field, ShotField other) {
        if (headings.has(field) && !told.containsKey(field) && told.containsKey(other)) {
            told.put(field, new Told(told.get(other).unit(), "as " + other.column()));
        }
    }

    private Told usual(ShotField field) {
        if (field.units() == FileUnit.SPEEDS) {
            return new Told(
                    FileUnit.called(book.speed().label(), FileUnit.SPEEDS).orElseThrow(), "book");
        }
        if (field.units() == FileUnit.DISTANCES) {
            return new Told(
                    FileUnit.called(book.distance().label(), FileUnit.DISTANCES).orElseThrow(), "book");
        }
        return new Told(field.units().get(0), "usual");
    }
}
