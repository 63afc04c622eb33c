package org.bagwright.sessions;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.units.Limit;

/** What a column of a file may hold, with the words of the trade at large for it, the most exact first. */
enum ShotField {
    GOLFER("Golfer", "golfer", "player", "golfer name", "player name", "name"),
    CLUB("Club", "club", "club name", "club used", "club type"),
    DATE("Date", "date", "day", "shot date", "session date", "date time", "date and time", "timestamp"),
    SETTING("Setting", "setting", "sleeve setting", "hit at"),
    HEAD_SPEED(
            "Head speed",
            FileUnit.SPEEDS,
            Limit.HEAD_SPEED_MPS,
            "head speed",
            "clubhead speed",
            "club speed",
            "swing speed"),
    BALL_SPEED("Ball speed", FileUnit.SPEEDS, Limit.BALL_SPEED_MPS, "ball speed", "ball", "initial ball speed"),
    LAUNCH(
            "Launch",
            FileUnit.ANGLES,
            Limit.LAUNCH_DEG,
            "launch",
            "launch angle",
            "vertical launch",
            "vertical launch angle",
            "launch elevation"),
    SPIN("Spin", FileUnit.SPINS, Limit.SPIN_RPM, "backspin", "backspin rate", "spin", "spin rate", "total spin"),
    ATTACK("Attack", FileUnit.ANGLES, Limit.ATTACK_DEG, "attack", "attack angle", "angle of attack", "aoa"),
    CARRY("Carry", FileUnit.DISTANCES, Limit.CARRY_M, "carry", "carry distance", "carry dist"),
    SIDE(
            "Side",
            FileUnit.DISTANCES,
            new Limit(-200, 200, "m"),
            "side",
            "carry side",
            "side distance",
            "side carry distance",
            "offline",
            "offline distance",
            "carry offline",
            "lateral",
            "lateral distance",
            "lateral carry"),
    LANDING(
            "Landing",
            FileUnit.ANGLES,
            new Limit(0, 90, "degrees"),
            "landing",
            "landing angle",
            "land angle",
            "angle of landing",
            "angle of descent"),
    SHOTS("Shots", List.of(), new Limit(1, 1000, ""), "shots", "shot count", "number of shots", "shots averaged");

    /** A shot must have at least one of these. */
    static final List<ShotField> MEASURED = List.of(BALL_SPEED, LAUNCH, SPIN, CARRY);

    private final String column;

    @SuppressWarnings("ImmutableEnumChecker") // List.of gives a list that cannot change
    private final List<FileUnit> units;

    private final Optional<Limit> limit;

    @SuppressWarnings("ImmutableEnumChecker") // a list that cannot change
    private final List<String> names;

    @SuppressWarnings("ImmutableEnumChecker") // a list that cannot change
    private final List<Set<String>> words;

    ShotField(String column, String... names) {
        this(column, List.of(), null, names);
    }

    ShotField(String column, List<FileUnit> units, Limit limit, String... names) {
        this.column = column;
        this.units = units;
        this.limit = Optional.ofNullable(limit);
        this.names = List.of(names);
        this.words =
                this.names.stream().map(name -> new HeadingText(name).words()).toList();
    }

    /** The heading of the column of the sheet Shots that it fills. */
    String column() {
        return column;
    }

    List<FileUnit> units() {
        return units;
    }

    boolean isNumber() {
        return limit.isPresent();
    }

    /** What a number can be, in the domain's unit. */
    Limit limit() {
        return limit.orElseThrow();
    }

    /** How exactly the words of a heading name it, 0 the most; empty where they do not. */
    OptionalInt rank(Set<String> heading) {
        int rank = words.indexOf(heading);
        return rank < 0 ? OptionalInt.empty() : OptionalInt.of(rank);
    }

    /** The column of the sheet Shots with this heading. */
    static Optional<ShotField> ofColumn(String heading) {
        return Arrays.stream(values())
                .filter(field -> CloseNames.key(field.column).equals(CloseNames.key(heading)))
                .findFirst();
    }

    static List<String> columns() {
        return Arrays.stream(values()).map(ShotField::column).toList();
    }

    /** The column that a heading, which names none, is probably a slip of; the number of a shot is none of how many. */
    static Optional<ShotField> closest(String heading) {
        List<ShotField> fields =
                Arrays.stream(values()).filter(field -> field != SHOTS).toList();
        List<String> all = fields.stream()
                .flatMap(field -> field.names.stream())
                .filter(name -> name.length() > 3)
                .toList();
        return CloseNames.closest(heading, all).flatMap(name -> fields.stream()
                .filter(field -> field.names.contains(name))
                .findFirst());
    }

    /** The units that it may have, as a person reads them. */
    String unitLabels() {
        return units().stream().map(FileUnit::label).collect(Collectors.joining(", "));
    }
}
