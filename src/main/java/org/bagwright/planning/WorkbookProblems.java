package org.bagwright.planning;

import java.util.List;
import org.bagwright.domain.book.Message;

/** Something is wrong in the workbook: every problem at once, each with its cell. Nothing was written. */
public final class WorkbookProblems extends Exception {
    private final transient List<Message> messages;

    WorkbookProblems(List<Message> messages) {
        super(messages.size() + " messages about the workbook");
        this.messages = List.copyOf(messages);
    }

    /** The problems, and the warnings that came with them. */
    public List<Message> messages() {
        return messages;
    }
}
