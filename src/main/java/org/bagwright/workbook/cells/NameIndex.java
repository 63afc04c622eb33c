package org.bagwright.workbook.cells;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.ListText;
import org.bagwright.workbook.schema.Column;

/** Names of a sheet, found without regard to letter case and repeated space, each with the cell that names it first. */
public final class NameIndex {
    private record Entry(String name, String cell) {}

    private final Map<String, Entry> byKey = new LinkedHashMap<>();
    private boolean complete = true;

    /** Takes a name in; gives the cell of the same name when it was there already. */
    public Optional<String> add(String name, String cell) {
        Entry earlier = byKey.putIfAbsent(CloseNames.key(name), new Entry(name, cell));
        return Optional.ofNullable(earlier).map(Entry::cell);
    }

    /** The name as it was first written. */
    public Optional<String> find(String name) {
        return Optional.ofNullable(byKey.get(CloseNames.key(name))).map(Entry::name);
    }

    /**
     * The name as it was first written, for one that a row gives. One that is not there spoils the row; it is reported
     * unless a name could not be read.
     *
     * @param mustBe what it must be, such as {@code a name on the sheet Sleeves}
     */
    public Optional<String> find(InputRow row, Column column, String name, String mustBe) {
        return known(row, column, name, mustBe, ".");
    }

    /** As {@link #find(InputRow, Column, String, String)}, for names so few that all are listed. */
    public Optional<String> pick(InputRow row, Column column, String name, String mustBe) {
        return known(row, column, name, mustBe, "; expected " + ListText.quotedOneOf(names()) + ".");
    }

    private Optional<String> known(InputRow row, Column column, String name, String mustBe, String end) {
        Optional<String> known = find(name);
        if (known.isEmpty()) {
            row.spoil();
        }
        if (known.isEmpty() && complete) {
            row.problem(
                    column,
                    column.subject() + " must be " + mustBe + ", found \"" + name + "\"" + end
                            + CloseNames.maybe(name, names()));
        }
        return known;
    }

    public Collection<String> names() {
        return byKey.values().stream().map(Entry::name).toList();
    }

    /** A name could not be read, so one that is not found may still be there. */
    public void missesOne() {
        complete = false;
    }

    /** Whether every name could be read, so that one that is not found is really not there. */
    public boolean isComplete() {
        return complete;
    }

    public boolean isEmpty() {
        return byKey.isEmpty();
    }

    /** The golfer that a row names, or the only golfer of the book where the cell is blank; reports anything else. */
    public Optional<String> golferOf(InputRow row, Column column) {
        if (!row.isGiven(column)) {
            return onlyOne(row, column);
        }
        Optional<String> text = row.text(column);
        if (text.isEmpty() || isEmpty()) {
            row.spoil();
            return Optional.empty();
        }
        return find(row, column, text.get(), "a name on the sheet Golfers");
    }

    private Optional<String> onlyOne(InputRow row, Column column) {
        if (!complete || isEmpty()) {
            row.spoil();
            return Optional.empty();
        }
        if (byKey.size() == 1) {
            return names().stream().findFirst();
        }
        row.problem(
                column,
                "golfer must be filled in when the book has several, found nothing; expected "
                        + ListText.quotedOneOf(names()) + ".");
        return Optional.empty();
    }
}
