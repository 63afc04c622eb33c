package org.bagwright.workbook.read;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.book.Aim;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.BookSettings;
import org.bagwright.domain.book.Golfer;
import org.bagwright.domain.book.Matching;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.schema.AimColumn;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.StartSetting;

/**
 * Warns of aims that differ from the usual ones but change nothing, since nothing is wanted that they could weigh.
 *
 * @param rows the rows of the measures that the sheet gives
 * @param aims how much each measure counts
 * @param golfers the golfers
 * @param clubs the clubs
 */
record IdleAims(Map<Measure, InputRow> rows, Aims aims, List<Golfer> golfers, List<Club> clubs) {

    void warn(BookSettings settings, Findings findings) {
        rows.forEach((measure, row) ->
                row(measure, row, Aims.defaults(settings.matching()).of(measure)));
        warnOfMatching(settings.matching(), findings);
    }

    private void row(Measure measure, InputRow row, Aim usual) {
        Aim aim = aims.of(measure);
        Optional<String> idle = whyIdle(measure);
        if (aim.must() && !measure.canBeMust()) {
            idle(row, AimColumn.MUST, "no must limits the number of changes. Use Most changes on the sheet Golfers");
        } else if (aim.must() && idle.isPresent()) {
            idle(row, AimColumn.MUST, idle.get());
        } else if (aim.importancePoints() != usual.importancePoints() && idle.isPresent()) {
            idle(row, AimColumn.IMPORTANCE, idle.get());
        } else if (isOther(aim.toleranceMeasureUnits(), usual.toleranceMeasureUnits())) {
            boolean counts = aim.importancePoints() > 0 || aim.isHard();
            idle.or(() -> counts ? Optional.empty() : Optional.of("its importance is 0, and it is no must"))
                    .ifPresent(why -> idle(row, AimColumn.TOLERANCE, why));
        }
    }

    private static boolean isOther(double one, double two) {
        return Math.abs(one - two) > 1e-9 * two;
    }

    private static void idle(InputRow row, Column column, String why) {
        row.warning(column, column.subject() + " has no effect: " + why + ".");
    }

    /** Why a measure cannot count in this book; empty where it can. */
    private Optional<String> whyIdle(Measure measure) {
        return switch (measure) {
            case LOFT ->
                unless(clubs.stream().anyMatch(club -> club.targets().loftDeg().isPresent()), "Loft target");
            case CARRY -> unless(clubs.stream().anyMatch(IdleAims::hasCarryTarget), "Carry target");
            case SWINGWEIGHT ->
                unless(
                        clubs.stream()
                                .anyMatch(club -> club.targets().swingweight().isPresent()),
                        "Swingweight target");
            case SITS ->
                golfers.stream().anyMatch(IdleAims::limitsLooks)
                        ? Optional.empty()
                        : Optional.of("no golfer has Most open or Most closed");
            default -> Optional.empty();
        };
    }

    private static Optional<String> unless(boolean anyTarget, String column) {
        return anyTarget ? Optional.empty() : Optional.of("no club has a " + column);
    }

    private static boolean hasCarryTarget(Club club) {
        return club.targets().carryM().isPresent() && club.kind().carries();
    }

    private static boolean limitsLooks(Golfer golfer) {
        return golfer.limits().of(LimitKind.MOST_OPEN).isPresent()
                || golfer.limits().of(LimitKind.MOST_CLOSED).isPresent();
    }

    /** How clubs are matched, where matching does not count. */
    private void warnOfMatching(Matching matching, Findings findings) {
        Aim spread = aims.of(Measure.SPREAD);
        if (!matching.equals(Matching.DEFAULT) && spread.importancePoints() == 0 && !spread.isHard()) {
            StartSetting setting =
                    matching.by() == Matching.DEFAULT.by() ? StartSetting.MATCH_OVER : StartSetting.MATCH_BY;
            findings.warning(
                    StartSetting.SHEET,
                    setting.label() + " has no effect: spread has importance 0 on the sheet Aims and is no must.");
        }
    }
}
