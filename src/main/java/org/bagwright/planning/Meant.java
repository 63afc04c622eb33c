package org.bagwright.planning;

import java.util.Collection;
import org.bagwright.domain.text.CloseNames;

/** What a person probably meant who typed something that there is not. */
public final class Meant {
    private Meant() {}

    /** {@code " Maybe \"X\"?"} for the closest name, or nothing when none is close. */
    public static String maybe(String typed, Collection<String> names) {
        return CloseNames.maybe(typed, names);
    }
}
