package org.bagwright.workbook.result;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.book.CellChange;
import org.bagwright.domain.book.Message;

/**
 * What was written into the input sheets.
 *
 * @param changes every cell that says what is in the bag today
 * @param wishes every cell that takes what was changed on the sheet Plan of an earlier run
 * @param shotRows how many rows of the sheet Shots now say with which set-up they were hit
 * @param notWritten what could not be written, and why
 */
public record WrittenCells(List<CellChange> changes, List<CellChange> wishes, int shotRows, List<Message> notWritten) {
    public WrittenCells {
        changes = List.copyOf(changes);
        wishes = List.copyOf(wishes);
        notWritten = List.copyOf(notWritten);
    }

    WrittenCells withWishes(List<CellChange> others) {
        return new WrittenCells(changes, others, shotRows, notWritten);
    }

    WrittenCells with(OldSetupCells shots) {
        List<Message> all = new ArrayList<>(notWritten);
        all.addAll(shots.notWritten());
        return new WrittenCells(changes, wishes, shots.rows(), all);
    }
}
