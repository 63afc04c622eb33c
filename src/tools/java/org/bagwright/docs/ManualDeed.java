package org.bagwright.docs;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** One thing that a reader of the manual does, in the order of a chapter. */
sealed interface ManualDeed {
    /**
     * A command and what the manual shows of its output, in which a line of three dots means lines left out.
     *
     * @param words the command after the name of the program
     * @param code its exit code
     * @param writes the files that are there afterwards and were not before
     */
    record Typed(List<String> words, int code, Set<String> writes, List<String> shown) implements ManualDeed {}

    /** Rows filled in under the headings of a sheet. */
    record Filled(String book, String sheet, List<Map<String, Object>> rows) implements ManualDeed {}

    /** A file of text. */
    record Saved(String file, String text) implements ManualDeed {}

    /** Rows of a result sheet, looked at under some of its headings. */
    record Seen(String book, String sheet, List<String> headings) implements ManualDeed {}

    /** One cell of the sheet Plan, in the row of a slot counted from 1. */
    record Chosen(String book, int slot, String heading, Object value) implements ManualDeed {}
}
