package org.bagwright.sessions;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.bagwright.BookSketch;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.session.AddedShots;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.AddingShots;

/** An invented book of two golfers in yards and miles per hour, and files of shots for it. */
public final class SessionBook {
    private static final Charset UTF_16_WITH_MARK = StandardCharsets.UTF_16;

    private SessionBook() {}

    /** The book, without a sheet Shots. */
    public static BookSketch sketch() {
        return new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Iron speed")
                .row("Golfer A", 96, 80)
                .row("Golfer B", 96, 80)
                .sheet(
                        "Clubs",
                        "Golfer, Slot, Club, Kind, Loft, Lie, Length, Sleeve, Setting, Loft bend, Lie bend, Weighting")
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58, 45, "S", 2, null, null, "K: heel")
                .row("Golfer A", 2, "5 wood", "wood", 18, 58.5, 42)
                .row("Golfer A", 3, "4 hybrid", "hybrid", 22, 59, 40)
                .row("Golfer A", 4, "7 iron", "iron", 31, 62, 37, null, null, 0.5, 0)
                .row("Golfer A", 5, "PW", "wedge", 45, 64, 35.5)
                .row("Golfer A", 6, "52 degree", "wedge", 52, 64, 35.25)
                .row("Golfer A", 7, "56 degree", "wedge", 56, 64, 35.25)
                .row("Golfer B", 1, "Driver", "driver", 10.5, 58, 45)
                .row("Golfer B", 2, "7 iron", "iron", 31, 62, 37)
                .sheet("Sleeves", "Sleeve, Setting, Clock, Bend, Turns shaft")
                .row("S", 1, 12, 1.5, "yes")
                .row("S", 2, 3, 1.5, "yes")
                .row("S", 3, 6, 1.5, "yes")
                .weights()
                .row("K", "heel", "h", 10, -20, 30, 5)
                .row("K", "toe", "t", 10, -20, -30, 5);
    }

    /** Writes a text as a file in an encoding; UTF-16 with its mark. */
    public static Path file(Path file, String text, String charset) throws Exception {
        Charset encoding = charset.equals("UTF-16") ? UTF_16_WITH_MARK : Charset.forName(charset);
        return Files.write(file, text.getBytes(encoding));
    }

    /** Reads files with options given as on the command line: {@code --golfer}, {@code --date} and so on with their values. */
    public static AddedShots add(Path book, List<Path> files, String... options) throws Exception {
        List<String> columns = new ArrayList<>();
        List<String> settings = new ArrayList<>();
        Optional<String> golfer = Optional.empty();
        Optional<LocalDate> date = Optional.empty();
        Optional<String> speed = Optional.empty();
        Optional<String> distance = Optional.empty();
        for (int index = 0; index < options.length; index += 2) {
            String value = options[index + 1];
            switch (options[index]) {
                case "--column" -> columns.add(value);
                case "--setting" -> settings.add(value);
                case "--golfer" -> golfer = Optional.of(value);
                case "--date" -> date = Optional.of(LocalDate.parse(value));
                case "--speed" -> speed = Optional.of(value);
                default -> distance = Optional.of(value);
            }
        }
        SessionOptions given = new SessionOptions(golfer, date, settings, speed, distance);
        try (AddingShots adding = AddingShots.read(
                new SourceFile(book), new AddingShots.Request(files, Optional.empty(), columns, given))) {
            return adding.result();
        }
    }

    /** A shot in a line: whose, club, day, then what was measured in m/s, degrees, rpm and metres. */
    public static String shown(Shot shot) {
        Shot.Measured measured = shot.measured();
        String day = shot.series().date().map(found -> " " + found).orElse("");
        return shot.golfer().replace("Golfer ", "") + " " + shot.club() + day
                + number(" head", measured.headSpeedMps())
                + number(" ball", measured.ballSpeedMps())
                + number(" launch", measured.launchDeg())
                + number(" spin", measured.spinRpm())
                + number(" attack", measured.attackDeg())
                + number(" carry", measured.carryM())
                + number(" side", measured.sideRightM())
                + number(" landing", measured.landingDeg());
    }

    private static String number(String name, OptionalDouble value) {
        return value.isEmpty() ? "" : name + String.format(Locale.ROOT, " %.1f", value.getAsDouble());
    }

    public static String shown(List<Shot> shots) {
        return shots.stream().map(SessionBook::shown).collect(Collectors.joining("; "));
    }
}
