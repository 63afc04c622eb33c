package org.bagwright.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** The manual and the page on sleeves as one HTML file, with its pictures inside, for the archives that are handed out. */
public final class ManualHtml {
    private static final Path STYLE = ManualChapter.FOLDER.resolve("manual.css");
    private static final Pattern COMMENT = Pattern.compile("<!--.*?-->", Pattern.DOTALL);
    private static final Pattern PICTURE = Pattern.compile("<img src=\"([^\"]+)\"");
    private static final Pattern PAGE = Pattern.compile("href=\"(?:\\.\\./)?([a-z0-9-]+)\\.md\"");
    private static final List<TablesExtension> TABLES = List.of((TablesExtension) TablesExtension.create());

    private ManualHtml() {}

    /** Writes the file that is named. */
    public static void main(String[] args) throws IOException {
        Path out = Path.of(args[0]);
        Files.createDirectories(out.toAbsolutePath().getParent());
        Files.writeString(out, page());
    }

    static String page() throws IOException {
        StringBuilder body = new StringBuilder(section("README", ManualChapter.FOLDER.resolve("README.md")));
        for (ManualChapter chapter : ManualChapter.all()) {
            String name = chapter.name().replace(".md", "");
            body.append(section(name, ManualChapter.FOLDER.resolve(chapter.name())));
        }
        body.append(section("why", WhyPage.PAGE));
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width\">\n<title>Bagwright: manual</title>\n<style>\n"
                + Files.readString(STYLE) + "</style>\n</head>\n<body>\n" + body + "</body>\n</html>\n";
    }

    private static String section(String name, Path file) throws IOException {
        String text =
                COMMENT.matcher(Files.readString(file).replace("\r\n", "\n")).replaceAll("");
        Node document = Parser.builder().extensions(TABLES).build().parse(text);
        String html = HtmlRenderer.builder().extensions(TABLES).build().render(document);
        html = PAGE.matcher(html).replaceAll("href=\"#$1\"");
        Path folder = file.getParent();
        html = PICTURE.matcher(html)
                .replaceAll(found -> Matcher.quoteReplacement("<img src=\"" + data(folder, found) + "\""));
        return "<section id=\"" + name + "\">\n" + html + "</section>\n";
    }

    private static String data(Path folder, MatchResult found) {
        try {
            Path file = folder.resolve(found.group(1));
            String kind = file.toString().endsWith(".svg") ? "svg+xml" : "png";
            byte[] content = kind.equals("png")
                    ? Files.readAllBytes(file)
                    : Files.readString(file).replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8);
            return "data:image/" + kind + ";base64," + Base64.getEncoder().encodeToString(content);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
