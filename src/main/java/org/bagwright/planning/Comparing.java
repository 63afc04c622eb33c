package org.bagwright.planning;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.compare.ComparedBook;
import org.bagwright.domain.compare.Comparison;
import org.bagwright.files.KeptFile;
import org.bagwright.files.SourceFile;
import org.bagwright.workbook.result.CompareBook;

/** The use case of comparing: several books, each planned again from its own sheets. */
public final class Comparing {
    private final Planning planning;

    public Comparing(Planning planning) {
        this.planning = planning;
    }

    /**
     * Plans every book.
     *
     * @param books the files by the names that tell them apart, in their order; at least two
     * @throws SeveralProblems if a book has a problem; every book is read before
     * @throws IOException if a file cannot be read
     */
    public Comparison compare(Map<String, Path> books) throws SeveralProblems, IOException {
        Map<String, Charted> charted = new LinkedHashMap<>();
        Map<String, List<Message>> wrong = new LinkedHashMap<>();
        for (Map.Entry<String, Path> book : books.entrySet()) {
            try {
                charted.put(book.getKey(), new Charting(new SourceFile(book.getValue()), planning.work()).forPlan());
            } catch (WorkbookProblems problems) {
                wrong.put(book.getKey(), problems.messages());
            }
        }
        if (!wrong.isEmpty()) {
            throw new SeveralProblems(wrong);
        }
        List<ComparedBook> planned = new ArrayList<>();
        charted.forEach((name, book) -> planned.add(new ComparedBook(name, planning.plan(book))));
        return new Comparison(planned);
    }

    /**
     * Writes a book of its own with the sheet Compare.
     *
     * @return the backup of the file that was replaced, if there was one
     * @throws WorkbookProblems if that is open in another program
     * @throws IOException if the book cannot be written, saying why in plain words
     */
    public static Optional<KeptFile> write(Comparison comparison, Path target) throws WorkbookProblems, IOException {
        return new Target(target).write(output -> CompareBook.write(comparison, output));
    }

    /** Something is wrong in one or more of several workbooks. Nothing was written. */
    public static final class SeveralProblems extends Exception {
        private static final long serialVersionUID = 1;
        private final transient Map<String, List<Message>> messages;

        SeveralProblems(Map<String, List<Message>> messages) {
            super(messages.size() + " workbooks have problems");
            this.messages = new LinkedHashMap<>(messages);
        }

        /** The problems of each book that has any, and the warnings that came with them, by its name. */
        public Map<String, List<Message>> messages() {
            return new LinkedHashMap<>(messages);
        }
    }
}
