package org.bagwright.domain.book;

import java.util.Locale;
import java.util.Optional;
import org.bagwright.domain.club.ClubKind;

/**
 * By what clubs are matched to each other, and which of them (the measure spread).
 *
 * @param by the number that should be alike
 * @param over which clubs should be alike
 */
public record Matching(By by, Over over) {

    public static final Matching DEFAULT = new Matching(By.SWINGWEIGHT, Over.KIND);

    /** The number that should be alike. */
    public enum By {
        /** Swingweight, points. */
        SWINGWEIGHT("points", 1),
        /** Inertia of the whole club about its butt end, kg cm2. */
        INERTIA("kg cm2", 25);

        private final String unitLabel;
        private final double usualTolerance;

        By(String unitLabel, double usualTolerance) {
            this.unitLabel = unitLabel;
            this.usualTolerance = usualTolerance;
        }

        /** The unit of the number. */
        public String unitLabel() {
            return unitLabel;
        }

        /** How far clubs may be apart in a book that gives no tolerance, in that unit. */
        double usualTolerance() {
            return usualTolerance;
        }

        public String label() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Which clubs should be alike. */
    public enum Over {
        /** The clubs of each kind among themselves, putters left out. */
        KIND,
        /** Irons and wedges, all together. */
        IRONS,
        /** All clubs but the putter, all together. */
        BAG;

        public String label() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The name of the group in which a club of this kind is matched; empty if it is in none. */
    public Optional<String> groupOf(ClubKind kind) {
        if (!kind.carries()) {
            return Optional.empty();
        }
        return switch (over) {
            case KIND -> Optional.of(kind.label());
            case IRONS -> kind.bendable() ? Optional.of("irons and wedges") : Optional.empty();
            case BAG -> Optional.of("bag");
        };
    }
}
