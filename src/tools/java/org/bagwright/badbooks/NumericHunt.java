package org.bagwright.badbooks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bagwright.search.BagSearch;
import org.bagwright.search.model.SearchLimits;

/** Changes the numbers of the input sheets of a demo one at a time, plans each, and finds what changes much without a word. */
final class NumericHunt {
    private static final double MOST_S = 5;

    private NumericHunt() {}

    /**
     * Takes the most numbers of a column to try in each book, the folder to work in, the page that takes the table or -, and the
     * books: demos, or {@code filled}. Prints each try.
     */
    public static void main(String[] arguments) throws IOException {
        int most = Integer.parseInt(arguments[0]);
        Path folder = Path.of(arguments[1]);
        List<String> names = Stream.of(arguments).skip(3).toList();
        HuntTable table = new HuntTable();
        BagSearch search = new BagSearch(new SearchLimits(1, MOST_S));
        for (String name : names) {
            try (HuntBook book = new HuntBook(name, folder, search)) {
                for (HuntBook.Place place : book.places(most)) {
                    for (HuntChange change : HuntChange.values()) {
                        HuntTry tried = book.run(place, change);
                        table.add(tried);
                        System.out.println(name + " " + tried.line());
                    }
                }
            }
        }
        if (!arguments[2].equals("-")) {
            table.write(Path.of(arguments[2]));
        }
    }
}
