package org.bagwright.workbook.result;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.InflaterInputStream;

/** What the spreadsheet program has printed into a PDF: its pages and the sizes of their letters. */
final class PrintedPdf {
    private static final Pattern PAGE =
            Pattern.compile("/Type\\s*/Page[^s].*?/MediaBox\\s*\\[([^\\]]*)\\]", Pattern.DOTALL);
    private static final Pattern STREAM = Pattern.compile("/FlateDecode[^>]*>>\\s*stream\\r?\\n");
    private static final Pattern FONT_SIZE = Pattern.compile("/F\\d+ ([\\d.]+) Tf");

    private final byte[] bytes;
    private final String text;

    PrintedPdf(byte[] bytes) {
        this.bytes = bytes.clone();
        text = new String(bytes, StandardCharsets.ISO_8859_1);
    }

    /** The corners of every page, in points. */
    List<String> pages() {
        return PAGE.matcher(text).results().map(page -> page.group(1)).toList();
    }

    /** For each page with texts the sizes of its letters on the paper, in points: the page's scale is in them. */
    List<List<Double>> lettersPoints() throws IOException {
        List<List<Double>> letters = new ArrayList<>();
        Matcher stream = STREAM.matcher(text);
        while (stream.find()) {
            List<Double> sizes = FONT_SIZE
                    .matcher(inflated(stream.end()))
                    .results()
                    .map(size -> Double.parseDouble(size.group(1)))
                    .toList();
            if (!sizes.isEmpty()) {
                letters.add(sizes);
            }
        }
        return letters;
    }

    private String inflated(int start) throws IOException {
        try (InflaterInputStream content =
                new InflaterInputStream(new ByteArrayInputStream(bytes, start, bytes.length - start))) {
            return new String(content.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }
}
