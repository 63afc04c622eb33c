package org.bagwright.page;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import org.apache.commons.codec.digest.DigestUtils;

/** What every page has: its style and its script, each joined from small files in this order. */
enum PagePart {
    STYLE("", "", List.of("base.css", "ladder.css", "cards.css", "print.css")),
    SCRIPT(
            "(() => {\n\"use strict\";\n",
            "})();\n",
            List.of(
                    "numbers.js",
                    "score.js",
                    "words.js",
                    "broken.js",
                    "dom.js",
                    "state.js",
                    "ladderparts.js",
                    "ladder.js",
                    "look.js",
                    "clock.js",
                    "controls.js",
                    "figures.js",
                    "card.js",
                    "story.js",
                    "totals.js",
                    "changes.js",
                    "team.js",
                    "golfercard.js",
                    "main.js"));

    private final String before;
    private final String after;
    private final List<String> files;

    PagePart(String before, String after, List<String> files) {
        this.before = before;
        this.after = after;
        this.files = files;
    }

    /** The text between its tags. */
    String text() throws IOException {
        StringBuilder text = new StringBuilder("\n").append(before);
        for (String file : files) {
            text.append(content(file));
        }
        return text.append(after).toString();
    }

    /** The name of its text in a content security policy, such as {@code 'sha256-...'}. */
    String source() throws IOException {
        byte[] digest = DigestUtils.sha256(text().getBytes(StandardCharsets.UTF_8));
        return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    }

    /** A browser reads line ends as \n before it compares the digest. */
    private static String content(String file) throws IOException {
        try (InputStream input = PagePart.class.getResourceAsStream(file)) {
            if (input == null) {
                throw new IOException("the program's own file " + file + " is missing");
            }
            return new String(input.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        }
    }
}
