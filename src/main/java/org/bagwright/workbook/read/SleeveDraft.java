package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.text.ListText;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.SleeveColumn;

/** A sleeve as far as it is known: its marks also from rows with something wrong in them. */
final class SleeveDraft {
    private static final Pattern RANGE = Pattern.compile("(\\S+?)\\s*(?:-|\u2013|\u2014|\\bto\\b)\\s*(\\S+)");
    private static final Predicate<String> NUMBER =
            Pattern.compile("[0-9]{1,9}").asMatchPredicate();
    private static final Predicate<String> LETTER = Pattern.compile("\\p{L}").asMatchPredicate();

    private final String name;
    private final String cell;
    private final NameIndex marks = new NameIndex();
    private final List<SleeveSetting> settings = new ArrayList<>();
    private final RingMarks ring = new RingMarks();
    private boolean sound = true;

    SleeveDraft(String name, String cell) {
        this.name = name;
        this.cell = cell;
    }

    String name() {
        return name;
    }

    boolean hasMark(String text) {
        return marks.find(text).isPresent();
    }

    /** Whether a text is a range of marks, such as {@code 1-4} or {@code A to D}. */
    boolean isRange(String text) {
        return !hasMark(text) && !between(text).isEmpty();
    }

    /** The marks of a range; of anything else the text itself. */
    List<String> marksOf(String text) {
        return isRange(text) ? between(text) : List.of(text);
    }

    /**
     * The marks from one to another: of numbers and of single letters those that are between, of other marks those that come
     * between on the sheet. Empty where an end is no mark, or the first end comes after the second.
     */
    private List<String> between(String text) {
        Matcher range = RANGE.matcher(text);
        Optional<String> first = range.matches() ? marks.find(range.group(1)) : Optional.empty();
        Optional<String> last = range.matches() ? marks.find(range.group(2)) : Optional.empty();
        if (first.isEmpty() || last.isEmpty()) {
            return List.of();
        }
        List<String> all = List.copyOf(marks.names());
        ToIntFunction<String> place = place(first.get(), last.get(), all);
        return all.stream()
                .filter(mark -> place.applyAsInt(mark) >= place.applyAsInt(first.get()))
                .filter(mark -> place.applyAsInt(mark) <= place.applyAsInt(last.get()))
                .toList();
    }

    /** The order of marks of the same kind as both ends; marks of another kind come before all. */
    private static ToIntFunction<String> place(String first, String last, List<String> all) {
        if (NUMBER.test(first) && NUMBER.test(last)) {
            return mark -> NUMBER.test(mark) ? Integer.parseInt(mark) : -1;
        }
        if (LETTER.test(first) && LETTER.test(last)) {
            return mark -> LETTER.test(mark) ? Character.toLowerCase(mark.charAt(0)) : -1;
        }
        return all::indexOf;
    }

    /** Takes the mark of a row in and reports one that the sleeve has already. */
    void take(InputRow row, Optional<String> mark) {
        if (mark.isEmpty()) {
            marks.missesOne();
            return;
        }
        marks.add(mark.get(), row.cell(SleeveColumn.SETTING))
                .ifPresent(first -> row.problem(
                        SleeveColumn.SETTING,
                        "setting must be unique within a sleeve, found \"" + mark.get() + "\" of \"" + name
                                + "\" again, first in " + first + "."));
    }

    void add(SleeveSetting setting, String clockCell, String bendCell) {
        settings.add(setting);
        if (setting.rings().size() == 1) {
            ring.add(setting.mark(), setting.rings().get(0), clockCell, bendCell);
        }
    }

    /** Warns of a setting of a sleeve with one ring that is not as all its others let expect. */
    void sayOddSettings(Findings findings) {
        if (sound && ring.size() == settings.size()) {
            ring.sayOdd(name, findings);
        }
    }

    void spoil() {
        sound = false;
    }

    /** The mark as it was first written; reports one that the sleeve has not. */
    Optional<String> mark(InputRow row, Column column, String found) {
        return marks.pick(row, column, found, "a mark of the sleeve \"" + name + "\"");
    }

    /** The mark in a cell of another sheet; reports a blank one too. */
    Optional<String> neededMark(InputRow row, Column column) {
        if (!row.isGiven(column)) {
            row.problem(
                    column,
                    column.subject() + " must be filled in for a club with a sleeve, found nothing; expected "
                            + ListText.quotedOneOf(marks.names()) + ".");
        }
        return row.text(column).flatMap(text -> mark(row, column, text));
    }

    /** The problem that a club without a sleeve has a setting. */
    static String noSleeve(Column column, String found) {
        return column.subject() + " must be blank for a club without a sleeve, found \"" + found + "\".";
    }

    /** The sleeve itself; empty when something is wrong in its rows. */
    Optional<Sleeve> sleeve() {
        return sound ? Optional.of(new Sleeve(name, settings, cell)) : Optional.empty();
    }
}
