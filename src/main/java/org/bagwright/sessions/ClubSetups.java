package org.bagwright.sessions;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.Sleeve;
import org.bagwright.domain.club.SleeveSetting;
import org.bagwright.domain.text.CloseNames;

/** How the clubs of a book were set up when their shots were hit: as today, but for the settings that a person gives. */
final class ClubSetups {
    private final Book book;
    private final Map<String, ClubNames> names = new HashMap<>();
    private final Map<Club, String> given = new HashMap<>();

    ClubSetups(Book book, SessionOptions options) throws WrongOptionException {
        this.book = book;
        for (Golfer golfer : book.golfers()) {
            names.put(golfer.name(), new ClubNames(golfer.name(), book.bagOf(golfer)));
        }
        for (SessionOptions.SettingOf setting : options.settingsOf()) {
            take(setting, options.golfer());
        }
    }

    private void take(SessionOptions.SettingOf setting, Optional<String> only) throws WrongOptionException {
        List<Club> clubs = book.golfers().stream()
                .filter(golfer ->
                        only.isEmpty() || CloseNames.key(golfer.name()).equals(CloseNames.key(only.get())))
                .flatMap(golfer -> names.get(golfer.name()).find(setting.club()).stream())
                .toList();
        if (clubs.isEmpty()) {
            List<String> all = book.clubs().stream().map(Club::name).toList();
            throw new WrongOptionException("--setting names a club that the book has not, \"" + setting.club() + "\"."
                    + CloseNames.maybe(setting.club(), all));
        }
        Optional<String> wrong = Optional.empty();
        for (Club club : clubs) {
            try {
                given.put(club, mark(club, setting.mark()));
            } catch (BadRowException bad) {
                wrong = wrong.or(() -> Optional.of(bad.getMessage()));
            }
        }
        if (wrong.isPresent() && clubs.stream().noneMatch(given::containsKey)) {
            throw new WrongOptionException(
                    "--setting \"" + setting.club() + "=" + setting.mark() + "\": " + wrong.get());
        }
    }

    ClubNames of(Golfer golfer) {
        return names.get(golfer.name());
    }

    /**
     * How a club was set up.
     *
     * @param mark the mark of its setting in the file, empty where the file has none
     */
    Shot.Setup setup(Club club, String mark) throws BadRowException {
        Shot.Setup today = Shot.Setup.of(club);
        Optional<String> other = mark.isEmpty() ? Optional.ofNullable(given.get(club)) : Optional.of(mark(club, mark));
        return new Shot.Setup(
                other.or(today::setting), today.weighting(), today.loftBendDeg(), today.lieBendDeg(), today.lengthM());
    }

    private String mark(Club club, String text) throws BadRowException {
        Sleeve sleeve = book.sleeveOf(club)
                .orElseThrow(() -> new BadRowException(
                        club.name() + " has no sleeve, found the setting " + ShotCell.quoted(text) + "."));
        List<String> marks = sleeve.settings().stream().map(SleeveSetting::mark).toList();
        return sleeve.setting(text)
                .map(SleeveSetting::mark)
                .orElseThrow(() -> new BadRowException("the sleeve of " + club.name() + " has no setting "
                        + ShotCell.quoted(text) + "; it has " + String.join(", ", marks) + "."));
    }
}
