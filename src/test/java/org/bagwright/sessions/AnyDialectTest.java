package org.bagwright.sessions;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.session.AddedShots;

/** Any table of shots that is written in any dialect comes back equal. */
@Tag("analytic")
class AnyDialectTest {
    private static final double M_PER_YD = 0.9144;
    private static final double MPS_PER_MPH = 0.44704;

    /** A shot in the units of the book, its carry as its ball speed has it on the whole. */
    private record Row(int club, double ballMph, double carryYd, double sideYd, int spinRpm) {}

    /**
     * How a table is written.
     *
     * @param separator between cells
     * @param comma whether decimals have a comma
     * @param charset its encoding
     * @param lineEnd between lines
     * @param words which words the headings use
     * @param layout whether the unit is in brackets, in a row below, or with every number
     * @param seed of the order of columns and of what else there is
     */
    private record Dialect(
            char separator, boolean comma, String charset, String lineEnd, int words, int layout, long seed) {}

    private static final String[][] CLUBS = {
        {"Driver", "driver", "DR", "1w"}, {"5 wood", "5w", "W5", "5-wood"}, {"7 iron", "7i", "i7", "7-Iron"}
    };
    private static final double[] BALL_MPH = {140, 126, 107};
    private static final double[] CARRY_YD = {222, 194, 148};
    private static final String[][] HEADINGS = {
        {"Club", "Ball speed", "Carry", "Side", "Spin"},
        {"Club Name", "Ball Velocity", "Carry Distance", "Offline", "Spin Rate"},
        {"club_used", "ballSpeed", "CARRY DIST.", "Lateral", "Backspin"},
        {"CLUB", "BALL_SPEED", "Carry_Distance", "Side Carry Distance", "Back Spin"}
    };
    private static final String[] UNITS = {"", "mph", "yd", "yd", "rpm"};
    private static final String[] METRIC = {"", "km/h", "m", "m", "rpm"};

    @Provide
    Arbitrary<List<Row>> tables() {
        Arbitrary<Row> rows = Combinators.combine(
                        Arbitraries.integers().between(0, 2),
                        Arbitraries.integers().between(-50, 50),
                        Arbitraries.integers().between(-99, 99),
                        Arbitraries.integers().between(-400, 400),
                        Arbitraries.integers().between(1000, 9999))
                .as((club, ball, carry, side, spin) ->
                        new Row(club, BALL_MPH[club] + ball / 10.0, CARRY_YD[club] + carry / 10.0, side / 10.0, spin));
        return rows.list().ofMinSize(1).ofMaxSize(12);
    }

    @Provide
    Arbitrary<Dialect> dialects() {
        return Combinators.combine(
                        Arbitraries.of(',', ';', '\t'),
                        Arbitraries.of(true, false),
                        Arbitraries.of("UTF-8", "UTF-16", "windows-1252"),
                        Arbitraries.of("\n", "\r\n", "\r"),
                        Arbitraries.integers().between(0, HEADINGS.length - 1),
                        Arbitraries.integers().between(0, 3),
                        Arbitraries.longs())
                .as(Dialect::new);
    }

    @Property(tries = 150)
    void table_comesBackEqual(@ForAll("tables") List<Row> rows, @ForAll("dialects") Dialect dialect) throws Exception {
        Path folder = Files.createTempDirectory("dialect");
        Path book = SessionBook.sketch().write(folder.resolve("bag.xlsx"));
        Path file = SessionBook.file(folder.resolve("any.csv"), new Writer(rows, dialect).text(), dialect.charset());
        try {
            AddedShots added = SessionBook.add(book, List.of(file), "--golfer", "Golfer A");
            assertEquals(expected(rows), found(added.added()), Files.readString(file, StandardCharsets.ISO_8859_1));
            assertEquals(List.of(), added.files().get(0).left());
        } finally {
            Files.delete(book);
            Files.delete(file);
            Files.delete(folder);
        }
    }

    private static List<String> expected(List<Row> rows) {
        return rows.stream()
                .map(row -> line(CLUBS[row.club()][0], row.ballMph(), row.carryYd(), row.sideYd(), row.spinRpm()))
                .toList();
    }

    private static List<String> found(List<Shot> shots) {
        return shots.stream()
                .map(shot -> line(
                        shot.club(),
                        shot.measured().ballSpeedMps().getAsDouble() / MPS_PER_MPH,
                        shot.measured().carryM().getAsDouble() / M_PER_YD,
                        shot.measured().sideRightM().getAsDouble() / M_PER_YD,
                        shot.measured().spinRpm().getAsDouble()))
                .toList();
    }

    private static String line(String club, double ballMph, double carryYd, double sideYd, double spinRpm) {
        return String.format(Locale.ROOT, "%s %.2f %.2f %.2f %.0f", club, ballMph, carryYd, sideYd + 0.0, spinRpm)
                .replace("-0.00", "0.00");
    }

    /** Writes rows in a dialect; a number of the shot keeps equal rows apart. */
    private static final class Writer {
        private final List<Row> rows;
        private final Dialect dialect;
        private final Random random;
        private final List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3, 4, 5));

        Writer(List<Row> rows, Dialect dialect) {
            this.rows = rows;
            this.dialect = dialect;
            this.random = new Random(dialect.seed());
            Collections.shuffle(order, random);
        }

        String text() {
            List<String> lines = new ArrayList<>();
            for (int above = random.nextInt(4); above > 0; above--) {
                lines.add(random.nextBoolean() ? "" : "Range report " + above);
            }
            lines.add(joined(heading -> heading == 5 ? "No." : heading(heading)));
            if (dialect.layout() == 1) {
                lines.add(joined(column -> column == 5 ? "" : units()[column]));
            }
            for (int index = 0; index < rows.size(); index++) {
                int number = index;
                lines.add(joined(column -> column == 5 ? String.valueOf(number + 1) : cell(rows.get(number), column)));
                if (random.nextInt(5) == 0) {
                    lines.add("");
                }
            }
            if (random.nextBoolean()) {
                return String.join(dialect.lineEnd(), lines);
            }
            return String.join(dialect.lineEnd(), lines) + dialect.lineEnd();
        }

        private String[] units() {
            return metric() ? METRIC : UNITS;
        }

        private boolean metric() {
            return dialect.seed() % 2 == 0 && dialect.layout() != 3;
        }

        private String heading(int column) {
            String words = HEADINGS[dialect.words()][column];
            return dialect.layout() == 0 && column > 0
                    ? words + (random.nextBoolean() ? " (" + units()[column] + ")" : " [" + units()[column] + "]")
                    : words;
        }

        private String cell(Row row, int column) {
            double speed = metric() ? row.ballMph() * MPS_PER_MPH * 3.6 : row.ballMph();
            double distance = metric() ? M_PER_YD : 1;
            String unit = dialect.layout() == 2 && column > 0 ? " " + units()[column] : "";
            return switch (column) {
                case 0 -> CLUBS[row.club()][random.nextInt(4)];
                case 1 -> number(speed) + unit;
                case 2 -> number(row.carryYd() * distance) + unit;
                case 3 -> side(row.sideYd() * distance, unit);
                default -> row.spinRpm() + unit;
            };
        }

        private String side(double value, String unit) {
            return switch (unit.isEmpty() ? random.nextInt(3) : 0) {
                case 1 -> number(Math.abs(value)) + (value < 0 ? " L" : " R");
                case 2 -> number(Math.abs(value)) + (value < 0 ? "L" : "R");
                default -> number(value) + unit;
            };
        }

        private String number(double value) {
            String text = String.format(Locale.ROOT, "%.5f", value);
            return dialect.comma() ? text.replace('.', ',') : text;
        }

        private String joined(IntFunction<String> cells) {
            return order.stream()
                    .map(cells::apply)
                    .map(this::quoted)
                    .collect(Collectors.joining(String.valueOf(dialect.separator())));
        }

        private String quoted(String cell) {
            boolean must = cell.indexOf(dialect.separator()) >= 0;
            return must || random.nextInt(6) == 0 ? '"' + cell + '"' : cell;
        }
    }
}
