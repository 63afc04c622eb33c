package org.bagwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.bagwright.learning.HiddenGolfers;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The kept picture of chances is drawn as the code draws it; its dots are of more golfers than a test has time for. */
@Tag("regression")
class ChancesPictureTest {
    private static final Svg SMALL = new ChancesPicture(new HiddenGolfers(2, 1, true)).draw();

    @Test
    void kept_picture_differs_from_one_of_few_golfers_by_its_dots_alone() throws IOException {
        assertEquals(withoutDots(SMALL.written()), withoutDots(Files.readString(ChancesPicture.FILE)));
    }

    @Test
    void words_are_inside_and_apart() {
        assertEquals(List.of(), SMALL.clashes());
    }

    private static List<String> withoutDots(String picture) {
        return picture.lines().filter(line -> !line.startsWith("<circle")).toList();
    }
}
