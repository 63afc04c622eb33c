package org.bagwright.badbooks;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Files of shots in random dialects, most of them spoilt; each message is in words. */
final class ShotFiles {
    private static final List<String> HEADINGS = List.of(
            "Golfer",
            "Club",
            "Date",
            "Club Speed (mph)",
            "Ball Speed [m/s]",
            "Launch Angle",
            "Launch Direction",
            "Back Spin",
            "Attack Angle",
            "Carry (yd)",
            "Side",
            "Carry",
            "Setting",
            "Notes");
    private static final String[] CELLS = {
        "",
        "Driver",
        "Dr",
        "7i",
        "7 iron",
        "Golfer A",
        "nobody",
        "12",
        "139.5",
        "139,5",
        "2 600",
        "2,600",
        "12 L",
        "12.3R",
        "-12",
        "1e999",
        "NaN",
        "Infinity",
        "=1+1",
        "=cmd|' /C calc'!A0",
        "@SUM(A1)",
        "\"",
        "\"\"",
        "a\"b",
        "\"two\nlines\"",
        "2026-05-31",
        "31.05.2026",
        "5/31/26",
        "2026-02-30",
        "\u00a0",
        "\u200f\u05d0",
        "\ud83c\udfcc",
        "\ufeff",
        "9".repeat(400),
        "x".repeat(3000),
        "Average",
        "Std Dev",
        "-",
        "n/a",
        "yd",
        "[m]"
    };
    private static final char[] SEPARATORS = {',', ';', '\t', '|'};
    private static final List<Charset> CHARSETS = List.of(
            StandardCharsets.UTF_8,
            StandardCharsets.UTF_16,
            StandardCharsets.UTF_16LE,
            StandardCharsets.UTF_16BE,
            Charset.forName("windows-1252"));
    private static final int MOST_ROWS = 40;

    private final Random random;
    private final List<String> told;

    ShotFiles(Random random, List<String> told) {
        this.random = random;
        this.told = told;
    }

    byte[] bytes() {
        String text = table();
        Charset charset = random.nextInt(3) > 0 ? StandardCharsets.UTF_8 : CHARSETS.get(random.nextInt(5));
        told.add("shots in " + charset);
        byte[] bytes = ((random.nextInt(5) == 0 ? "\ufeff" : "") + text).getBytes(charset);
        return random.nextInt(4) == 0 ? spoilt(bytes) : bytes;
    }

    private String table() {
        char separator = SEPARATORS[random.nextInt(SEPARATORS.length)];
        List<String> headings = new ArrayList<>(HEADINGS);
        Collections.shuffle(headings, random);
        List<String> kept = headings.subList(0, 1 + random.nextInt(headings.size()));
        if (random.nextInt(5) > 0) {
            kept.set(0, "Club");
        }
        StringBuilder text = new StringBuilder();
        for (int line = random.nextInt(4); line > 1; line--) {
            text.append("Session of ").append(line).append(separator).append("\n");
        }
        text.append(String.join(String.valueOf(separator), kept)).append("\r\n");
        int wild = random.nextInt(4) == 0 ? 2 : 15;
        for (int row = random.nextInt(MOST_ROWS); row > 0; row--) {
            row(text, kept, separator, wild);
        }
        return text.toString();
    }

    /** @param wild one cell in so many is nothing like its column */
    private void row(StringBuilder text, List<String> headings, char separator, int wild) {
        int cells = random.nextInt(25) == 0 ? random.nextInt(30) : headings.size();
        for (int column = 0; column < cells; column++) {
            boolean odd = random.nextInt(wild) == 0 || column >= headings.size();
            text.append(column == 0 ? "" : separator)
                    .append(odd ? CELLS[random.nextInt(CELLS.length)] : usual(headings.get(column)));
        }
        text.append(random.nextInt(30) == 0 ? "" : "\n");
    }

    private String usual(String heading) {
        return switch (heading.charAt(0)) {
            case 'G' -> "Golfer A";
            case 'D' -> "2026-05-31";
            case 'N', 'S' -> "";
            case 'B' -> "6" + random.nextInt(10);
            case 'L' -> "1" + random.nextInt(10) + ".5";
            case 'A' -> "-" + random.nextInt(5);
            default -> heading.equals("Club") ? "Driver" : "2" + random.nextInt(10) + random.nextInt(10);
        };
    }

    private byte[] spoilt(byte[] whole) {
        byte[] bytes = whole.clone();
        int kind = random.nextInt(6);
        told.add("shots spoilt in the way " + kind);
        return switch (kind) {
            case 0 -> Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
            case 1 -> noise(bytes, 1 + random.nextInt(20));
            case 2 -> noise(new byte[random.nextInt(3000)], 3000);
            case 3 -> "PK\u0003\u0004 and no more".getBytes(StandardCharsets.ISO_8859_1);
            case 4 -> "x,".repeat(50_000).getBytes(StandardCharsets.UTF_8);
            default ->
                "Club,Carry\n\"Driver,200\n".repeat(1 + random.nextInt(2000)).getBytes(StandardCharsets.UTF_8);
        };
    }

    private byte[] noise(byte[] bytes, int count) {
        for (int index = 0; index < count && bytes.length > 0; index++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }
}
