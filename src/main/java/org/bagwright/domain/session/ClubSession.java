package org.bagwright.domain.session;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.LengthUnit;

/**
 * The shots with one club in one set-up on one day.
 *
 * @param club the club
 * @param date the day; empty for shots of no stated day
 * @param choice its set-up
 * @param lengthM its length where it was another than today's, m
 * @param shots the shots that count
 * @param forecast what was predicted of them; empty without earlier shots of the golfer, or without a carry
 */
public record ClubSession(
        Club club,
        Optional<LocalDate> date,
        Choice choice,
        OptionalDouble lengthM,
        List<Shot> shots,
        Optional<Forecast> forecast) {
    private static final String NOTHING_BEFORE = "nothing to predict from";
    private static final String NO_CARRY = "no carry measured";

    public ClubSession {
        shots = List.copyOf(shots);
    }

    /** Its set-up in words, such as {@code setting 2, loft bend -1}; empty for a club that cannot be set up. */
    public String setUpInWords(LengthUnit unit) {
        List<String> parts = new ArrayList<>();
        choice.setting().ifPresent(mark -> parts.add("setting " + mark));
        choice.weighting().ifPresent(name -> parts.add("weighting " + name));
        bend(parts, "loft bend ", choice.bend().loftDeg());
        bend(parts, "lie bend ", choice.bend().lieDeg());
        lengthM.ifPresent(valueM -> parts.add("length " + Numbers.trimmed(unit.fromM(valueM), 2) + " " + unit.label()));
        return String.join(", ", parts);
    }

    private static void bend(List<String> parts, String what, double bendDeg) {
        String text = Numbers.signed(bendDeg, 4).replaceFirst("\\.?0+$", "");
        if (bendDeg != 0) {
            parts.add(what + text);
        }
    }

    /** How its shots came out against what was predicted of them, in words. */
    public String inWords(LengthUnit unit) {
        return forecast.map(predicted -> predicted.inWords(unit))
                .orElse(summary(ShotFigure.CARRY).isPresent() ? NOTHING_BEFORE : NO_CARRY);
    }

    /** Whether it came out other than predicted, by more than chance. */
    public boolean isSurprise() {
        return forecast.isPresent() && !forecast.get().cameOut();
    }

    /** How many shots. */
    public int count() {
        return Summary.count(shots);
    }

    /** Mean and spread of a figure; empty where it was not measured. */
    public Optional<Summary> summary(ShotFigure figure) {
        return Summary.of(figure, shots);
    }
}
