package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.bagwright.domain.club.Ring;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.cells.Findings;

/** The marks of a sleeve with one ring: they share one bend, and mostly one spacing. */
final class RingMarks {
    private static final double SAME_DEG = 0.01;
    private static final double SAME_H = 0.02;
    private static final double ROUND_H = 12;
    private static final int FEWEST = 3;

    private record Mark(String name, Ring ring, String clockCell, String bendCell) {}

    private final List<Mark> marks = new ArrayList<>();

    void add(String name, Ring ring, String clockCell, String bendCell) {
        marks.add(new Mark(name, ring, clockCell, bendCell));
    }

    int size() {
        return marks.size();
    }

    /** Warns of the one mark that differs from all others, and of two that are the same. */
    void sayOdd(String sleeve, Findings findings) {
        List<Mark> bent =
                marks.stream().filter(mark -> mark.ring().bendDeg() > 0).toList();
        if (bent.size() < FEWEST) {
            return;
        }
        for (Mark mark : bent) {
            List<Mark> others =
                    bent.stream().filter(other -> !other.equals(mark)).toList();
            double othersDeg = others.get(0).ring().bendDeg();
            if (isShared(others, each -> each.ring().bendDeg())
                    && Math.abs(mark.ring().bendDeg() - othersDeg) > SAME_DEG) {
                findings.warning(
                        mark.bendCell(),
                        "Bend of setting " + mark.name() + " of sleeve " + sleeve + " is "
                                + Numbers.trimmed(mark.ring().bendDeg()) + " degrees, all others have "
                                + Numbers.trimmed(othersDeg) + ". Maybe it is mistyped: one ring has one bend.");
            }
        }
        saySame(bent, sleeve, findings);
        sayOffGrid(bent, sleeve, findings);
    }

    private static boolean isShared(List<Mark> marks, ToDoubleFunction<Mark> value) {
        double first = value.applyAsDouble(marks.get(0));
        return marks.stream().allMatch(mark -> Math.abs(value.applyAsDouble(mark) - first) < SAME_DEG);
    }

    private static void saySame(List<Mark> marks, String sleeve, Findings findings) {
        for (int index = 1; index < marks.size(); index++) {
            Mark mark = marks.get(index);
            marks.subList(0, index).stream()
                    .filter(earlier -> apartH(mark, earlier) < SAME_H)
                    .filter(earlier ->
                            isShared(List.of(mark, earlier), each -> each.ring().bendDeg()))
                    .findFirst()
                    .ifPresent(earlier -> findings.warning(
                            mark.clockCell(),
                            "Setting " + mark.name() + " of sleeve " + sleeve + " has the hour and bend of setting "
                                    + earlier.name() + ", "
                                    + Numbers.trimmed(mark.ring().clockH())
                                    + ". Maybe one of them is mistyped."));
        }
    }

    /** Marks that go round evenly but for one. */
    private static void sayOffGrid(List<Mark> marks, String sleeve, Findings findings) {
        double spacingH = ROUND_H / marks.size();
        List<Mark> odd = marks.stream()
                .filter(mark -> marks.stream()
                                .filter(other -> !other.equals(mark) && isOnGrid(apartH(mark, other), spacingH))
                                .count()
                        == 0)
                .toList();
        boolean same = marks.stream().anyMatch(mark -> marks.stream()
                .anyMatch(other -> !other.equals(mark) && apartH(mark, other) < SAME_H));
        if (odd.size() == 1 && marks.size() > FEWEST && !same && othersOnGrid(marks, odd.get(0), spacingH)) {
            findings.warning(
                    odd.get(0).clockCell(),
                    "Clock of setting " + odd.get(0).name() + " of sleeve " + sleeve + " is "
                            + Numbers.trimmed(odd.get(0).ring().clockH(), 2) + "; all other settings are "
                            + Numbers.trimmed(spacingH, 2) + " hours apart. Maybe it is mistyped.");
        }
    }

    private static boolean othersOnGrid(List<Mark> marks, Mark odd, double spacingH) {
        Mark first = marks.get(0).equals(odd) ? marks.get(1) : marks.get(0);
        return marks.stream()
                .filter(mark -> !mark.equals(odd))
                .allMatch(mark -> isOnGrid(apartH(first, mark), spacingH));
    }

    private static boolean isOnGrid(double apartH, double spacingH) {
        return Math.abs(apartH / spacingH - Math.rint(apartH / spacingH)) * spacingH < SAME_H;
    }

    private static double apartH(Mark one, Mark other) {
        double apartH = Math.abs(one.ring().clockH() - other.ring().clockH()) % ROUND_H;
        return Math.min(apartH, ROUND_H - apartH);
    }
}
