package org.bagwright.badbooks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The table of a hunt: a row for each column of the input sheets, with what became of each change. */
final class HuntTable {
    private static final String BEGIN = "<!-- table of NumericHunt -->";
    private static final String END = "<!-- end of the table -->";

    private final List<HuntTry> tries = new ArrayList<>();

    void add(HuntTry tried) {
        tries.add(tried);
    }

    /** Puts the table in the place of the old one on a page. */
    void write(Path page) throws IOException {
        String text = Files.readString(page);
        int begin = text.indexOf(BEGIN) + BEGIN.length();
        Files.writeString(page, text.substring(0, begin) + "\n" + text() + text.substring(text.indexOf(END)));
    }

    private String text() {
        Map<String, List<HuntTry>> columns = tries.stream()
                .collect(Collectors.groupingBy(
                        tried -> tried.place().sheet() + " | " + tried.place().column(),
                        LinkedHashMap::new,
                        Collectors.toList()));
        StringBuilder text = new StringBuilder("| sheet | column | numbers |");
        for (HuntChange change : HuntChange.values()) {
            text.append(' ').append(change.label()).append(" |");
        }
        text.append(" why a large change can be silent |\n|---|---|---|")
                .append("---|".repeat(HuntChange.values().length))
                .append("---|\n");
        columns.forEach((column, ofColumn) -> text.append(row(column, ofColumn)));
        return text.append(row("all | ", tries)).toString();
    }

    private static String row(String column, List<HuntTry> ofColumn) {
        long numbers = ofColumn.stream()
                .filter(tried -> tried.change() == HuntChange.BLANK)
                .count();
        String cells = Stream.of(HuntChange.values())
                .map(change -> cell(ofColumn.stream()
                        .filter(tried -> tried.change() == change)
                        .toList()))
                .collect(Collectors.joining(" | "));
        String why = column.startsWith("all")
                ? ""
                : ofColumn.stream()
                        .filter(HuntTry::isSilent)
                        .map(tried -> HuntReason.of(tried).words())
                        .distinct()
                        .collect(Collectors.joining("; "));
        return "| " + column + " | " + numbers + " | " + cells + " | " + why + " |\n";
    }

    /** Such as {@code 2 refused, 3 told (1 large), 4 small, 1 **silent**}. */
    private static String cell(List<HuntTry> ofChange) {
        List<String> parts = new ArrayList<>();
        List<HuntTry> told = ofChange.stream()
                .filter(tried -> tried.told() != HuntTry.Told.NOT && tried.told() != HuntTry.Told.REFUSED)
                .toList();
        long largeTold = told.stream().filter(HuntTry::isLarge).count();
        addCount(parts, count(ofChange, tried -> tried.told() == HuntTry.Told.REFUSED), "refused");
        addCount(parts, told.size(), largeTold == 0 ? "told" : "told (" + largeTold + " large)");
        addCount(parts, count(ofChange, tried -> tried.told() == HuntTry.Told.NOT && !tried.isLarge()), "small");
        addCount(parts, count(ofChange, HuntTry::isSilent), "**silent**");
        return String.join(", ", parts);
    }

    private static long count(List<HuntTry> tries, Predicate<HuntTry> test) {
        return tries.stream().filter(test).count();
    }

    private static void addCount(List<String> parts, long count, String what) {
        if (count > 0) {
            parts.add(count + " " + what);
        }
    }
}
