package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bagwright.domain.compare.ComparedClub;
import org.bagwright.domain.compare.ComparedField;
import org.bagwright.domain.compare.ComparedGolfer;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.session.Forecast;
import org.bagwright.domain.text.Numbers;

/** In what several books differ about one golfer, as a terminal shows it. */
final class DifferenceText {
    private static final String SAME = "  The same clubs in the same set-up, with the same wishes and figures.";
    private static final List<String> SPEEDS = List.of("head speed", "ball speed", "ball speed of shots");
    /** Rises of one figure that are alike for clubs: of speeds but for rounding, of landing angles more freely. */
    private static final double ALIKE_PERCENT = 0.6;

    private static final double ALIKE_DEG = 1;
    /** The line about a club that is in the bag in some books only. */
    private static final Set<String> SAID_OF_NEW = Set.of("setting", "carry", "gap");

    private static final int LEAST_CLUBS = 3;
    private static final int TOP_LINES = 2;

    private final ComparedGolfer golfer;
    private final List<ComparedClub> clubs;
    private final Set<String> toldForAll = new TreeSet<>();

    DifferenceText(ComparedGolfer golfer) {
        this.golfer = golfer;
        this.clubs = golfer.clubs();
    }

    /** At most so many lines; where that is not all, the last one says where the rest is. */
    List<String> lines(int most) {
        if (golfer.isSame()) {
            return List.of(SAME);
        }
        List<String> lines = new ArrayList<>();
        addTop(lines, "Wishes differ, so points do not compare one to one: ", golfer.wishes());
        addTop(lines, "Golfer and conditions: ", golfer.conditions());
        addTop(lines, "Points today: ", golfer.points(BagResult::today));
        addTop(lines, "Points planned: ", golfer.points(BagResult::planned));
        lines.addAll(alike());
        List<String> details = details();
        List<String> roomy = wrapped(details, 2);
        lines.addAll(lines.size() + roomy.size() <= most ? roomy : wrapped(details, 1));
        return cut(lines, most);
    }

    private static List<String> wrapped(List<String> texts, int most) {
        return texts.stream()
                .flatMap(text -> new WrappedText(text, 6).lines(most).stream())
                .toList();
    }

    private static List<String> cut(List<String> lines, int most) {
        if (lines.size() <= most) {
            return lines;
        }
        List<String> first = new ArrayList<>(lines.subList(0, most - 1));
        first.add("  " + (lines.size() - most + 1) + " more lines: -o OUT writes all of it into a book.");
        return first;
    }

    private static void addTop(List<String> lines, String label, List<ComparedField> fields) {
        String differing = differing(fields.stream());
        if (!differing.isEmpty()) {
            lines.addAll(new WrappedText("  " + label + differing, 4).lines(TOP_LINES));
        }
    }

    private static String differing(Stream<ComparedField> fields) {
        return fields.filter(ComparedField::differs)
                .map(field -> field.inWords() + (field.unit().matches("mph|m/s|km/h") ? percent(field) : ""))
                .collect(Collectors.joining(", "));
    }

    /** Without what one line says for all clubs, and little about a club that some bag leaves out. */
    private boolean isWorthSaying(ComparedField field) {
        return !toldForAll.contains(field.what()) && (field.isInAllBooks() || SAID_OF_NEW.contains(field.what()));
    }

    private static String percent(ComparedField field) {
        OptionalDouble rise = field.risePercent();
        return rise.isPresent() ? " (" + Numbers.signed(rise.getAsDouble(), 1) + " %)" : "";
    }

    /** What rises alike with several clubs has one cause, and one line. */
    private List<String> alike() {
        List<String> all = new ArrayList<>();
        SPEEDS.forEach(speed ->
                alike(speed, ComparedField::risePercent, ALIKE_PERCENT, " %").ifPresent(all::add));
        alike("landing", ComparedField::rise, ALIKE_DEG, " deg").ifPresent(all::add);
        return all.isEmpty()
                ? List.of()
                : new WrappedText("  All alike: " + String.join(", ", all), 4).lines(TOP_LINES);
    }

    private Optional<String> alike(
            String what, Function<ComparedField, OptionalDouble> rise, double mostApart, String unit) {
        DoubleSummaryStatistics range = clubs.stream()
                .flatMap(club -> Stream.concat(club.today().stream(), club.planned().stream()))
                .filter(field -> field.what().equals(what) && field.differs())
                .flatMapToDouble(field -> rise.apply(field).stream())
                .summaryStatistics();
        if (range.getCount() < LEAST_CLUBS || range.getMax() - range.getMin() > mostApart) {
            return Optional.empty();
        }
        toldForAll.add(what);
        String least = Numbers.signed(range.getMin(), 1);
        String most = Numbers.signed(range.getMax(), 1);
        return Optional.of(what + " " + (least.equals(most) ? least : least + " to " + most) + unit);
    }

    private List<String> details() {
        List<String> lines = new ArrayList<>();
        addClubs(
                lines,
                "  Today:",
                club -> Stream.concat(
                        club.setUp().stream(), club.today().stream().filter(this::isWorthSaying)));
        addClubs(lines, "  Came out other than predicted:", club -> club.sessions().stream()
                .filter(field -> field.what().startsWith("last session"))
                .filter(field -> field.values().stream().anyMatch(value -> value.endsWith(Forecast.NO_CHANCE))));
        addClubs(lines, "  As planned:", club -> club.planned().stream().filter(this::isWorthSaying));
        return lines;
    }

    private void addClubs(List<String> lines, String heading, Function<ComparedClub, Stream<ComparedField>> fields) {
        List<String> own = new ArrayList<>();
        for (ComparedClub club : clubs) {
            if (!club.missingIn().isEmpty()) {
                if (lines.isEmpty()) {
                    own.add("    " + club.club() + ": not in " + String.join(", ", club.missingIn()));
                }
                continue;
            }
            String text = differing(fields.apply(club));
            if (!text.isEmpty()) {
                own.add("    " + club.club() + ": " + text);
            }
        }
        if (!own.isEmpty()) {
            lines.add(heading);
            lines.addAll(own);
        }
    }
}
