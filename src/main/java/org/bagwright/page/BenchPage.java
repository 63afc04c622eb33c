package org.bagwright.page;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.commons.codec.digest.DigestUtils;
import org.bagwright.domain.plan.BookResult;

/**
 * The page of a planned book: one HTML file that needs no other and that nothing can make reach a network.
 *
 * @param result the planned book
 */
public record BenchPage(BookResult result) {
    /** Enough to tell books apart in an address. */
    private static final int DIGEST_CHARS = 8;

    private static final String HEAD =
            """
            <!doctype html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src %s; script-src %s; \
            base-uri 'none'; form-action 'none'">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="color-scheme" content="light dark">
            <meta name="referrer" content="no-referrer">
            <title>Bagwright</title>
            """;
    private static final String BODY =
            """
            </head>
            <body>
            <noscript>This page needs JavaScript, which is switched off here. It runs nothing but what is in this file.\
            </noscript>
            """;

    /** Writes the file; it ends with a line end. */
    public void write(OutputStream output) throws IOException {
        String style = PagePart.STYLE.text();
        String script = PagePart.SCRIPT.text();
        String page = HEAD.formatted(PagePart.STYLE.source(), PagePart.SCRIPT.source())
                + "<style>" + style + "</style>\n"
                + BODY
                + "<script type=\"application/json\" id=\"book\">" + data() + "</script>\n"
                + "<script>" + script + "</script>\n</body>\n</html>\n";
        output.write(page.getBytes(StandardCharsets.UTF_8));
    }

    /** The book as JSON in which no character can end the element that it is in. */
    private String data() throws IOException {
        ObjectNode book = new BookData(result).node();
        ObjectMapper mapper = new ObjectMapper();
        book.put("digest", DigestUtils.sha256Hex(mapper.writeValueAsBytes(book)).substring(0, DIGEST_CHARS));
        return mapper.writeValueAsString(book).replace("<", "\\u003c");
    }
}
