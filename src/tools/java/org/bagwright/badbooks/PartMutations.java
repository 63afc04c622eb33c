package org.bagwright.badbooks;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Spoils the parts of the file itself: tags, values and whole parts, as a bad disk or another program might. */
final class PartMutations {
    private static final Pattern TAG = Pattern.compile("<[^>]+>");
    private static final Pattern VALUE = Pattern.compile("=\"([^\"]*)\"");
    private static final Pattern ATTRIBUTE = Pattern.compile(" [\\w:]+=\"[^\"]*\"");
    private static final Pattern CONTENT = Pattern.compile(">([^<]+)<");
    private static final String[] VALUES = {
        "",
        "0",
        "-1",
        "1",
        "99999",
        "2147483648",
        "4294967296",
        "1.5",
        "x",
        "true",
        "A1",
        "XFE1",
        "A1:B2",
        "rId1",
        "rId99",
        "../x",
        "/xl/workbook.xml",
        "#REF!",
        "n",
        "s",
        "e",
        "str",
        "inlineStr",
        "1e999",
        "NaN",
        "&#65;",
        "http://x",
        "yyyy"
    };
    private static final String[] INSERTS = {
        "<!-- x -->",
        "<?x y?>",
        "<![CDATA[1]]>",
        "<x/>",
        "<v>7</v>",
        "<f>1+1</f>",
        "<c/>",
        "<row/>",
        "&lt;",
        "&#0;",
        "&x;",
        "\u0001",
        "<mc:AlternateContent xmlns:mc=\"x\"/>",
        " xml:space=\"preserve\"",
        "<extLst/>"
    };

    private final Random random;
    private final List<String> told;
    private final Map<String, byte[]> parts = new LinkedHashMap<>();

    PartMutations(byte[] file, Random random, List<String> told) throws IOException {
        this.random = random;
        this.told = told;
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(file))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                parts.put(entry.getName(), in.readAllBytes());
            }
        }
    }

    /** The file with one to three changes. */
    byte[] apply() throws IOException {
        for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
            change(any(List.copyOf(parts.keySet())));
        }
        byte[] file = packed();
        return random.nextInt(10) == 0 ? damaged(file) : file;
    }

    private <T> T any(List<T> things) {
        return things.get(random.nextInt(things.size()));
    }

    private void change(String part) {
        String text = new String(parts.get(part), StandardCharsets.UTF_8);
        int kind = random.nextInt(12);
        String now =
                switch (kind) {
                    case 0, 1, 2 -> replaced(text, VALUE, "=\"" + VALUES[random.nextInt(VALUES.length)] + "\"");
                    case 3, 4 -> replaced(text, CONTENT, ">" + VALUES[random.nextInt(VALUES.length)] + "<");
                    case 5 -> replaced(text, ATTRIBUTE, "");
                    case 6 -> replaced(text, TAG, "");
                    case 7 -> doubled(text);
                    case 8 -> inserted(text);
                    case 9 -> text.substring(0, random.nextInt(text.length() + 1));
                    case 10 -> new String(parts.get(any(List.copyOf(parts.keySet()))), StandardCharsets.UTF_8);
                    default -> "";
                };
        told.add(part + " changed in the way " + kind);
        parts.put(part, now.getBytes(StandardCharsets.UTF_8));
        if (kind == 11 && random.nextBoolean() && parts.size() > 1) {
            parts.remove(part);
        }
    }

    private String replaced(String text, Pattern what, String with) {
        List<MatchResult> found = what.matcher(text).results().toList();
        if (found.isEmpty()) {
            return text;
        }
        MatchResult one = any(found);
        told.add(one.group() + " now " + with);
        return text.substring(0, one.start()) + with + text.substring(one.end());
    }

    /** A piece from one tag to another, up to ten tags on, twice. */
    private String doubled(String text) {
        List<MatchResult> tags = TAG.matcher(text).results().toList();
        if (tags.isEmpty()) {
            return text;
        }
        int first = random.nextInt(tags.size());
        int last = Math.min(tags.size() - 1, first + random.nextInt(10));
        String piece = text.substring(tags.get(first).start(), tags.get(last).end());
        return text.substring(0, tags.get(last).end())
                + piece
                + text.substring(tags.get(last).end());
    }

    private String inserted(String text) {
        List<Integer> places = new ArrayList<>(List.of(0, text.length()));
        TAG.matcher(text).results().forEach(tag -> places.add(tag.end()));
        int at = any(places);
        return text.substring(0, at) + INSERTS[random.nextInt(INSERTS.length)] + text.substring(at);
    }

    private byte[] packed() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                out.putNextEntry(new ZipEntry(part.getKey()));
                out.write(part.getValue());
            }
        }
        return bytes.toByteArray();
    }

    private byte[] damaged(byte[] file) {
        if (random.nextInt(3) == 0) {
            told.add("the file is cut short");
            return Arrays.copyOf(file, random.nextInt(file.length));
        }
        told.add("bits of the file flip");
        for (int flips = 1 + random.nextInt(4); flips > 0; flips--) {
            file[random.nextInt(file.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return file;
    }
}
