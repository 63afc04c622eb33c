package org.bagwright.planning.options;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Reading;
import org.bagwright.domain.book.Wording;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.RatedChange;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.text.Numbers;
import org.bagwright.geometry.ClubGeometry;

/**
 * How far a sleeve's own table and the geometry are apart on one club.
 *
 * @param made the club
 * @param readings its gauge readings
 */
record RatedMessages(SlotClub made, List<Reading> readings) {
    private static final double SHAFT_DEG = 0.3;
    private static final double FACE_DEG = 1;
    private static final Pattern SIGNED = Pattern.compile("[+\\u2212-]\\s*\\d+(\\.\\d+)?");

    /** A column of a sleeve's table. */
    private enum TableColumn {
        LOFT("Loft change", SHAFT_DEG, "the rings", "the rings, the marks or the gauge") {
            @Override
            OptionalDouble rated(RatedChange change) {
                return change.loftDeg();
            }

            @Override
            OptionalDouble misfitDeg(ClubGeometry geometry, String mark) {
                return geometry.ratedLoftMisfitDeg(mark);
            }
        },
        LIE("Lie change", SHAFT_DEG, "the rings", "the rings") {
            @Override
            OptionalDouble rated(RatedChange change) {
                return change.lieDeg();
            }

            @Override
            OptionalDouble misfitDeg(ClubGeometry geometry, String mark) {
                return geometry.ratedLieMisfitDeg(mark);
            }
        },
        FACE("Face change", FACE_DEG, "the geometry", "the changes of loft, which close a face as it sits") {
            @Override
            OptionalDouble rated(RatedChange change) {
                return change.faceDeg();
            }

            @Override
            OptionalDouble misfitDeg(ClubGeometry geometry, String mark) {
                return geometry.ratedFaceMisfitDeg(mark);
            }
        };

        private final String heading;
        private final double mostDeg;
        private final String than;
        private final String agreesWith;

        TableColumn(String heading, double mostDeg, String than, String agreesWith) {
            this.heading = heading;
            this.mostDeg = mostDeg;
            this.than = than;
            this.agreesWith = agreesWith;
        }

        abstract OptionalDouble rated(RatedChange change);

        abstract OptionalDouble misfitDeg(ClubGeometry geometry, String mark);
    }

    List<Message> all() {
        List<Message> messages = new ArrayList<>();
        made.sleeve().ifPresent(sleeve -> {
            for (TableColumn column : TableColumn.values()) {
                if (isReversed(sleeve, column)) {
                    messages.add(reversed(sleeve, column));
                } else {
                    sleeve.settings()
                            .forEach(setting -> misfit(sleeve, setting, column).ifPresent(messages::add));
                }
            }
            asOneRing(sleeve).ifPresent(messages::add);
        });
        return messages;
    }

    /**
     * Whether the column is far nearer to the geometry with its signs turned: summed over the settings, the squares of what
     * is off are then less than a quarter. Loft also has the signs of marks such as +1 and the gauge to go by.
     */
    private boolean isReversed(Sleeve sleeve, TableColumn column) {
        double asWritten = 0;
        double turned = 0;
        int telling = 0;
        for (SleeveSetting setting : sleeve.settings()) {
            OptionalDouble rated = rated(setting, column);
            OptionalDouble misfit = column.misfitDeg(made.geometry(), setting.mark());
            if (rated.isPresent() && misfit.isPresent()) {
                asWritten += square(misfit.getAsDouble());
                turned += square(misfit.getAsDouble() - 2 * rated.getAsDouble());
                telling += Math.abs(rated.getAsDouble()) > SHAFT_DEG ? 1 : 0;
            }
        }
        boolean byGeometry = telling > 1 && asWritten > square(column.mostDeg) && turned < asWritten / 4;
        return byGeometry || (column == TableColumn.LOFT && (marksDeny(sleeve) || gaugeDenies(sleeve)));
    }

    private static OptionalDouble rated(SleeveSetting setting, TableColumn column) {
        return setting.rated().map(column::rated).orElseGet(OptionalDouble::empty);
    }

    /** Whether each mark that is a number with a sign has the other sign in the table; two or more of them tell. */
    private static boolean marksDeny(Sleeve sleeve) {
        List<SleeveSetting> signed = sleeve.settings().stream()
                .filter(setting -> SIGNED.matcher(setting.mark()).matches())
                .filter(setting -> rated(setting, TableColumn.LOFT).orElse(0) != 0)
                .toList();
        return signed.size() > 1
                && signed.stream()
                        .allMatch(setting -> setting.mark().startsWith("+")
                                == rated(setting, TableColumn.LOFT).getAsDouble() < 0);
    }

    /** Whether the gauge reads less loft where the table gives more, over all pairs of settings that were read. */
    private boolean gaugeDenies(Sleeve sleeve) {
        double together = 0;
        double table = 0;
        for (Reading one : readings) {
            for (Reading other : readings) {
                double tableDeg = tableLoftDeg(sleeve, one) - tableLoftDeg(sleeve, other);
                double readDeg =
                        one.loftDeg().orElse(Double.NaN) - other.loftDeg().orElse(Double.NaN);
                if (Double.isFinite(tableDeg * readDeg)) {
                    together += tableDeg * readDeg;
                    table += square(tableDeg);
                }
            }
        }
        return table > 1 && together < -table / 2;
    }

    private static double tableLoftDeg(Sleeve sleeve, Reading reading) {
        return reading.setting()
                .flatMap(sleeve::setting)
                .map(setting -> rated(setting, TableColumn.LOFT))
                .orElseGet(OptionalDouble::empty)
                .orElse(Double.NaN);
    }

    private static double square(double deg) {
        return deg * deg;
    }

    private static Message reversed(Sleeve sleeve, TableColumn column) {
        String text = "The signs of " + column.heading + " of sleeve " + sleeve.name()
                + " look reversed: with + and - swapped they agree with " + column.agreesWith
                + ". Maybe the table counts the other way. It is used as it is.";
        return Message.warning(sleeve.cell(), text).in(column.heading);
    }

    private Optional<Message> misfit(Sleeve sleeve, SleeveSetting setting, TableColumn column) {
        OptionalDouble misfitDeg = column.misfitDeg(made.geometry(), setting.mark());
        if (misfitDeg.isEmpty() || !(Math.abs(misfitDeg.getAsDouble()) > column.mostDeg)) {
            return Optional.empty();
        }
        Club club = made.club();
        String what = column.heading.toLowerCase(Locale.ROOT);
        return Optional.of(Message.warning(
                club.cell(),
                Wording.ofClub(
                        "The sleeve's table is off " + column.than + ", and the table is used: ",
                        club.golfer(),
                        club.name(),
                        "sleeve " + sleeve.name() + ", setting " + setting.mark() + ": " + what + " "
                                + Numbers.signed(misfitDeg.getAsDouble(), 2) + " degrees off",
                        ".")));
    }

    private Optional<Message> asOneRing(Sleeve sleeve) {
        boolean tableOnly =
                sleeve.settings().stream().anyMatch(setting -> setting.rings().isEmpty());
        Club club = made.club();
        return tableOnly
                ? made.geometry()
                        .ratedFit()
                        .map(fit -> Message.assumed(
                                club.cell(),
                                Wording.ofClub(
                                        "The sleeve has only its own table, read as one ring: ",
                                        club.golfer(),
                                        club.name(),
                                        "sleeve " + sleeve.name() + ", a bend of "
                                                + Numbers.fixed(fit.commonBendDeg(), 1) + " degrees, misfit "
                                                + Numbers.fixed(fit.misfitDeg(), 1),
                                        ".")))
                : Optional.empty();
    }
}
