package org.bagwright.workbook.result;

import java.util.List;
import org.bagwright.domain.book.CellChange;
import org.bagwright.domain.book.Message;

/**
 * What was written into the sheet Clubs.
 *
 * @param changes every cell
 * @param notWritten what could not be written, and why
 */
public record WrittenCells(List<CellChange> changes, List<Message> notWritten) {
    public WrittenCells {
        changes = List.copyOf(changes);
        notWritten = List.copyOf(notWritten);
    }
}
