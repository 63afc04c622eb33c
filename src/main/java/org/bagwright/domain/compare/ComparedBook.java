package org.bagwright.domain.compare;

import java.util.Optional;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.units.Checks;

/**
 * One planned book among others.
 *
 * @param name what tells it from the others
 * @param result its plan
 */
public record ComparedBook(String name, BookResult result) {
    public ComparedBook {
        Checks.named(name, "book");
    }

    /** The bag of a golfer, ignoring case. */
    public Optional<BagResult> bagOf(String golfer) {
        return result.bags().stream()
                .filter(bag -> bag.golfer().name().equalsIgnoreCase(golfer))
                .findFirst();
    }
}
