package org.bagwright.workbook.read;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.NameIndex;

/** The sleeves or the kits of a book as far as they are known, each found by its name. */
final class Drafts<T> {
    private final NameIndex names = new NameIndex();
    private final Map<String, T> byKey = new LinkedHashMap<>();
    private final boolean missing;

    private Drafts(boolean missing) {
        this.missing = missing;
    }

    /** Those of a sheet; none yet. */
    static <T> Drafts<T> ofSheet() {
        return new Drafts<>(false);
    }

    /** No sheet at all: nothing is known. */
    static <T> Drafts<T> withoutSheet() {
        Drafts<T> drafts = new Drafts<>(true);
        drafts.names.missesOne();
        return drafts;
    }

    boolean isMissing() {
        return missing;
    }

    /** The names as they were first written. */
    NameIndex names() {
        return names;
    }

    /** The one of this name, made on its first row. */
    T named(String name, String cell, Function<String, T> maker) {
        names.add(name, cell);
        return byKey.computeIfAbsent(CloseNames.key(name), key -> maker.apply(name));
    }

    Optional<T> find(String name) {
        return Optional.ofNullable(byKey.get(CloseNames.key(name)));
    }

    List<T> all() {
        return List.copyOf(byKey.values());
    }
}
