package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.club.Club;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.ShotColumn;

/** Reads the sheet Shots. */
final class ShotReader {
    private final ClubRows rows;
    private final Drafts<SleeveDraft> sleeves;
    private final Drafts<KitDraft> kits;
    private final List<Shot> shots = new ArrayList<>();

    private ShotReader(InputTable table, CoreSheets core) {
        this.rows = new ClubRows(
                table, core.golferNames(), core.clubs(), ShotColumn.GOLFER, ShotColumn.CLUB, ShotColumn.MEASURED);
        this.sleeves = core.sleeves();
        this.kits = core.kits();
    }

    /** The shots of a book; without a readable sheet Clubs their clubs are not checked. */
    static List<Shot> read(InputTable table, CoreSheets core) {
        ShotReader reader = new ShotReader(table, core);
        reader.rows.read(reader::readRow);
        return reader.shots;
    }

    /** A row that the fitter sets aside is not read, so nothing in it is a problem. */
    private void readRow(InputRow row) {
        if (!row.yesNo(ShotColumn.USE).orElse(true)) {
            return;
        }
        row.require(ShotColumn.CLUB);
        Optional<String> golfer = rows.golferOf(row);
        Optional<String> club = rows.clubOf(row, golfer);
        rows.requireMeasured(
                row,
                ShotColumn.CLUB,
                "the shot has no measured value; expected at least one of "
                        + ShotColumn.MEASURED.stream().map(Column::header).collect(Collectors.joining(", "))
                        + ".");
        Shot.Measured measured = measured(row);
        Shot.Setup setup =
                club.map(name -> setup(row, golfer.orElseThrow(), name)).orElse(Shot.Setup.TODAY);
        Shot.Series series = series(row);
        if (!row.isSpoilt()) {
            String cell = row.cell(ShotColumn.CLUB);
            shots.add(new Shot(golfer.orElseThrow(), club.orElseThrow(), measured, setup, series, cell));
        }
    }

    private static Shot.Measured measured(InputRow row) {
        return new Shot.Measured(
                row.number(ShotColumn.HEAD_SPEED),
                row.number(ShotColumn.BALL_SPEED),
                row.number(ShotColumn.LAUNCH),
                row.number(ShotColumn.SPIN),
                row.number(ShotColumn.ATTACK),
                row.number(ShotColumn.CARRY),
                row.number(ShotColumn.SIDE),
                row.number(ShotColumn.LANDING));
    }

    private static Shot.Series series(InputRow row) {
        return new Shot.Series(
                row.date(ShotColumn.DATE), row.whole(ShotColumn.SHOTS).orElse(1), row.number(ShotColumn.SPREAD));
    }

    /** How the club was set up, checked against what it can be set to. */
    private Shot.Setup setup(InputRow row, String golfer, String name) {
        if (ShotColumn.SETUP.stream().noneMatch(row::isGiven)) {
            return Shot.Setup.TODAY;
        }
        Optional<Club> club = rows.only(row, golfer, name, "a shot with a set-up");
        return new Shot.Setup(
                club.flatMap(known -> mark(row, known)),
                club.flatMap(known -> weighting(row, known)),
                bend(row, ShotColumn.LOFT_BEND, club),
                bend(row, ShotColumn.LIE_BEND, club),
                row.number(ShotColumn.LENGTH));
    }

    private Optional<String> mark(InputRow row, Club club) {
        Optional<String> found = row.text(ShotColumn.SETTING);
        if (club.sleeve().isEmpty()) {
            found.ifPresent(text -> row.problem(ShotColumn.SETTING, SleeveDraft.noSleeve(ShotColumn.SETTING, text)));
        }
        return club.sleeve()
                .flatMap(sleeves::find)
                .flatMap(sleeve -> found.flatMap(text -> sleeve.mark(row, ShotColumn.SETTING, text)));
    }

    private Optional<String> weighting(InputRow row, Club club) {
        Optional<String> found = row.text(ShotColumn.WEIGHTING);
        if (club.kit().isEmpty()) {
            found.ifPresent(text -> row.problem(
                    ShotColumn.WEIGHTING,
                    "weighting must be blank for a club without a kit of weights, found \"" + text + "\"."));
        }
        return club.kit()
                .flatMap(kits::find)
                .flatMap(kit -> found.flatMap(text -> kit.weightingOrPair(row, ShotColumn.WEIGHTING, text)));
    }

    /** A bend may be one that the club's row no longer allows: it was made before. */
    private static OptionalDouble bend(InputRow row, Column column, Optional<Club> club) {
        return row.isGiven(column)
                ? OptionalDouble.of(ClubBends.bendOf(row, column, club.map(Club::kind)))
                : OptionalDouble.empty();
    }
}
