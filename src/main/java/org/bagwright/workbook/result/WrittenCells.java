package org.bagwright.workbook.result;

import java.util.List;
import org.bagwright.domain.book.CellChange;
import org.bagwright.domain.book.Message;

/**
 * What was written into the input sheets.
 *
 * @param changes every cell that says what is in the bag today
 * @param wishes every cell that takes what was changed on the sheet Plan of an earlier run
 * @param notWritten what could not be written, and why
 */
public record WrittenCells(List<CellChange> changes, List<CellChange> wishes, List<Message> notWritten) {
    public WrittenCells {
        changes = List.copyOf(changes);
        wishes = List.copyOf(wishes);
        notWritten = List.copyOf(notWritten);
    }

    WrittenCells withWishes(List<CellChange> others) {
        return new WrittenCells(changes, others, notWritten);
    }
}
