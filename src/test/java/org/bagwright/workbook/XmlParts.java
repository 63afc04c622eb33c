package org.bagwright.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.math3.util.Precision;

/** The parts of a book, each as a list of lines: a path of elements, an attribute or text, and its value. Of pictures only the names count. */
final class XmlParts {
    private static final int MOST_TOLD = 25;

    /** Sines and powers may differ in their last digits from machine to machine. */
    private static final double LAST_DIGITS = 1e-7;

    /** Times of day, and how long the search took. */
    private static final Pattern TIMES = Pattern.compile("\\d{4}-\\d\\d-\\d\\dT[0-9:.]+Z|\\b[0-9.]+ s\\b");

    private static final String TEXTS = "xl/sharedStrings.xml";

    private final Map<String, Map<String, String>> lines = new TreeMap<>();

    static XmlParts of(Path file) throws IOException {
        XmlParts parts = new XmlParts();
        BookPackage book = BookPackage.of(file);
        for (String part : book.entries()) {
            parts.lines.put(part, book.isXml(part) ? lines(part, book.parts().get(part)) : new TreeMap<>());
        }
        parts.putTextsIntoCells();
        return parts;
    }

    /** Sheets are written at the same time, so that a text's place among the shared ones differs from run to run. */
    private void putTextsIntoCells() {
        List<StringBuilder> texts = new ArrayList<>();
        lines.getOrDefault(TEXTS, Map.of()).forEach((path, value) -> {
            if (path.matches("/sst/si(\\[\\d+])?")) {
                texts.add(new StringBuilder());
            } else if (path.startsWith("/sst/si")) {
                texts.get(texts.size() - 1)
                        .append(path.substring(path.indexOf('/', 5)))
                        .append(value);
            }
        });
        lines.put(TEXTS, new TreeMap<>());
        for (Map<String, String> part : lines.values()) {
            part.replaceAll((path, value) ->
                    path.endsWith("/v") && "s".equals(part.get(path.substring(0, path.length() - 2) + "@t"))
                            ? texts.get(Integer.parseInt(value)).toString()
                            : value);
        }
    }

    private static Map<String, String> lines(String part, byte[] content) {
        try {
            return lines(XMLInputFactory.newDefaultFactory().createXMLStreamReader(new ByteArrayInputStream(content)));
        } catch (XMLStreamException broken) {
            throw new AssertionError(part + " is no XML: " + broken.getMessage(), broken);
        }
    }

    private static Map<String, String> lines(XMLStreamReader reader) throws XMLStreamException {
        Map<String, String> lines = new LinkedHashMap<>();
        List<String> path = new ArrayList<>(List.of(""));
        List<Map<String, Integer>> counts = new ArrayList<>(List.of(new TreeMap<>()));
        while (reader.hasNext()) {
            int event = reader.next();
            if (event == XMLStreamReader.START_ELEMENT) {
                String name = reader.getLocalName();
                int count = counts.get(counts.size() - 1).merge(name, 1, Integer::sum);
                String here = path.get(path.size() - 1) + "/" + name + (count > 1 ? "[" + count + "]" : "");
                path.add(here);
                counts.add(new TreeMap<>());
                lines.put(here, "");
                for (int index = 0; index < reader.getAttributeCount(); index++) {
                    lines.put(here + "@" + reader.getAttributeLocalName(index), reader.getAttributeValue(index));
                }
            } else if (event == XMLStreamReader.END_ELEMENT) {
                path.remove(path.size() - 1);
                counts.remove(counts.size() - 1);
            } else if (event == XMLStreamReader.CHARACTERS) {
                lines.merge(path.get(path.size() - 1), reader.getText(), String::concat);
            }
        }
        return lines;
    }

    List<String> names() {
        return List.copyOf(lines.keySet());
    }

    /** Where another book differs: its parts, or the first lines of each part. */
    List<String> differences(XmlParts other) {
        List<String> found = new ArrayList<>();
        Set<String> all = new TreeSet<>(lines.keySet());
        all.addAll(other.lines.keySet());
        for (String part : all) {
            if (!lines.containsKey(part) || !other.lines.containsKey(part)) {
                found.add(part + (lines.containsKey(part) ? " is gone" : " is new"));
            } else {
                compare(part, lines.get(part), other.lines.get(part), found);
            }
        }
        return found;
    }

    private static void compare(String part, Map<String, String> kept, Map<String, String> made, List<String> found) {
        Set<String> paths = new TreeSet<>(kept.keySet());
        paths.addAll(made.keySet());
        int told = 0;
        for (String path : paths) {
            if (!same(kept.get(path), made.get(path)) && told++ < MOST_TOLD) {
                found.add(part + " " + path + ": " + kept.get(path) + " -> " + made.get(path));
            }
        }
    }

    private static boolean same(String kept, String made) {
        if (kept == null || made == null || kept.equals(made)) {
            return kept != null && kept.equals(made);
        }
        try {
            return Precision.equalsWithRelativeTolerance(
                    Double.parseDouble(kept), Double.parseDouble(made), LAST_DIGITS);
        } catch (NumberFormatException words) {
            return TIMES.matcher(kept).replaceAll("").equals(TIMES.matcher(made).replaceAll(""));
        }
    }
}
