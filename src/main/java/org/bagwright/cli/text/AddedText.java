package org.bagwright.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Shot;
import org.bagwright.domain.session.AddedShots;
import org.bagwright.domain.session.SessionShots;
import org.bagwright.domain.session.SessionShots.UsedHeading;
import org.bagwright.domain.text.Numbers;

/**
 * What came of adding files of shots, for people: headings first, then counts by club, then what was left out.
 *
 * @param result what was found and added
 * @param dryRun whether nothing is written
 */
public record AddedText(AddedShots result, boolean dryRun) {
    private static final int MOST_LEFT = 20;

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        result.files().forEach(file -> lines.addAll(headings(file)));
        lines.add(count(result.added().size())
                + (dryRun ? " would be added" : " added")
                + (result.already().isEmpty() ? "." : ", " + result.already().size() + " already in the book."));
        lines.addAll(clubs());
        result.files().forEach(file -> lines.addAll(left(file)));
        result.learnt().ifPresent(text -> lines.add("Remembered on the sheet Start: " + plain(text)));
        lines.addAll(new MessageText(result.messages()).notes());
        return lines;
    }

    private static String count(int shots) {
        return shots + (shots == 1 ? " shot" : " shots");
    }

    private static List<String> headings(SessionShots file) {
        List<String> lines = new ArrayList<>();
        lines.add(file.file() + ":");
        for (UsedHeading used : file.headings()) {
            String unit = used.unit()
                    .map(label -> ", " + label + " (" + used.unitFrom() + ")")
                    .orElse("");
            lines.add("  " + plain(used.heading()) + " -> " + used.column() + unit);
        }
        if (!file.notUsed().isEmpty()) {
            lines.add("  not used: " + plain(String.join(", ", file.notUsed())));
        }
        return lines;
    }

    private List<String> clubs() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        result.added().forEach(shot -> counts.merge(club(shot), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(each -> "  " + each.getKey() + ": " + each.getValue())
                .toList();
    }

    private static String club(Shot shot) {
        Shot.Setup setup = shot.setup();
        List<String> parts = new ArrayList<>();
        setup.setting().ifPresent(mark -> parts.add("setting " + mark));
        setup.weighting().ifPresent(name -> parts.add(name));
        Function<Double, String> signed = bendDeg -> Numbers.signed(bendDeg, 1);
        setup.loftBendDeg().stream()
                .filter(bend -> bend != 0)
                .forEach(bend -> parts.add("loft bend " + signed.apply(bend)));
        setup.lieBendDeg().stream()
                .filter(bend -> bend != 0)
                .forEach(bend -> parts.add("lie bend " + signed.apply(bend)));
        shot.series().date().ifPresent(day -> parts.add(String.valueOf(day)));
        return shot.golfer() + ", " + shot.club()
                + (parts.isEmpty() ? "" : parts.stream().collect(Collectors.joining(", ", " (", ")")));
    }

    private static List<String> left(SessionShots file) {
        List<String> lines = new ArrayList<>();
        if (!file.left().isEmpty()) {
            lines.add("Left out: " + file.left().size() + (file.left().size() == 1 ? " row" : " rows"));
        }
        file.left().stream()
                .limit(MOST_LEFT)
                .map((Message message) -> "  " + message.cell() + ": " + plain(message.text()))
                .forEach(lines::add);
        if (file.left().size() > MOST_LEFT) {
            lines.add("  and " + (file.left().size() - MOST_LEFT) + " more; --json lists all.");
        }
        return lines;
    }

    /** A text of a file without what would move the cursor of a terminal. */
    private static String plain(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ");
    }
}
