package org.bagwright;

import java.io.IOException;
import java.nio.file.Path;
import org.bagwright.workbook.template.BlankBook;

/** Makes the books that are kept beside the code: the blank one, then the demos that are filled from it. */
public final class KeptBooks {
    private KeptBooks() {}

    public static void main(String[] args) throws IOException {
        BlankBook.write(Path.of("templates", "bag.xlsx"));
        DemoBooks.main(args);
    }
}
