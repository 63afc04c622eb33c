package org.bagwright.workbook.text;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * What a plan filled into the cells of one row that a person may change, kept in a hidden cell of that row, so that the
 * next plan knows what he changed.
 */
public final class PlanMemory {
    private final Map<String, String> filled = new LinkedHashMap<>();

    /** What a cell with this text remembers; nothing where it is none of ours. */
    public static PlanMemory parse(String text) {
        PlanMemory memory = new PlanMemory();
        for (String part : text.split("\\|")) {
            int equals = part.indexOf('=');
            if (equals > 0) {
                memory.filled.put(part.substring(0, equals), part.substring(equals + 1));
            }
        }
        return memory;
    }

    /** Remembers the text filled into a cell that a person may change, blank for nothing. */
    public void put(String heading, String value) {
        filled.put(heading, value);
    }

    /** Remembers a number as it is shown. */
    public void put(String heading, OptionalDouble value) {
        put(heading, value.isPresent() ? Double.toString(value.getAsDouble()) : "");
    }

    /** What was filled in; empty where the row has no such cell to change. */
    public Optional<String> of(String heading) {
        return Optional.ofNullable(filled.get(heading));
    }

    /** The number that was filled in; empty where the cell was blank. */
    public OptionalDouble number(String heading) {
        String text = filled.getOrDefault(heading, "");
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    public String text() {
        return filled.entrySet().stream()
                .map(entry -> entry.getKey() + "=" + entry.getValue())
                .collect(Collectors.joining("|"));
    }
}
