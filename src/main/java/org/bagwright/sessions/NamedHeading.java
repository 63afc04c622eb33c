package org.bagwright.sessions;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.bagwright.sessions.LearntHeadings.Meaning;

/**
 * A heading that names a field.
 *
 * @param index its column, from 0
 * @param heading the heading
 * @param field what its column holds
 * @param unit the unit that the heading itself gives
 * @param rank how exactly it names the field, the least the most exactly
 */
record NamedHeading(int index, HeadingText heading, ShotField field, Optional<FileUnit> unit, int rank) {
    private static final int GIVEN_RANK = -1;
    private static final int GIVEN_WITH_UNIT_RANK = -2;

    boolean isGiven() {
        return rank <= GIVEN_RANK;
    }

    boolean isUnitGiven() {
        return rank == GIVEN_WITH_UNIT_RANK;
    }

    /** What a heading means: as given by a person, as its words say, or as its words before a unit say. */
    static Optional<NamedHeading> of(int index, HeadingText heading, LearntHeadings learnt) {
        Optional<Meaning> given = learnt.of(heading);
        if (given.isPresent()) {
            return given.get().field().map(field -> {
                Optional<FileUnit> unit = given.get().unit().or(() -> unit(heading, field));
                int rank = given.get().unit().isPresent() ? GIVEN_WITH_UNIT_RANK : GIVEN_RANK;
                return new NamedHeading(index, heading, field, unit, rank);
            });
        }
        Set<String> words = heading.words();
        HeadingText shorter = heading.withoutLastWord();
        Set<String> shorterWords = shorter.words();
        for (ShotField field : ShotField.values()) {
            OptionalInt rank = field.rank(words);
            if (rank.isPresent()) {
                return Optional.of(new NamedHeading(index, heading, field, unit(heading, field), rank.getAsInt()));
            }
            OptionalInt shorterRank = field.rank(shorterWords);
            Optional<FileUnit> last = FileUnit.called(heading.lastWord(), field.units());
            if (last.isPresent() && shorterRank.isPresent()) {
                return Optional.of(new NamedHeading(index, heading, field, last, shorterRank.getAsInt()));
            }
        }
        return Optional.empty();
    }

    private static Optional<FileUnit> unit(HeadingText heading, ShotField field) {
        return heading.inBrackets().stream()
                .flatMap(text -> FileUnit.called(text, field.units()).stream())
                .findFirst()
                .or(() -> FileUnit.called(heading.lastWord(), field.units()));
    }
}
