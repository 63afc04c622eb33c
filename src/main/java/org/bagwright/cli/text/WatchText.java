package org.bagwright.cli.text;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.compare.ComparedBook;
import org.bagwright.domain.compare.Comparison;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.WorkProgress;
import org.bagwright.domain.text.Numbers;
import org.bagwright.files.KeptFile;

/** What a person reads who lets a book be watched: a short line for each save. */
public final class WatchText {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final int MOST_CHANGES = 4;
    private static final String WAITING = "  waiting for the next save";

    private final PrintWriter out;
    private final ProgressLine progress;
    private final AnsiStyle style;
    private Optional<BookResult> before = Optional.empty();
    private boolean heldTold;

    public WatchText(PrintWriter out, ProgressLine progress, AnsiStyle style) {
        this.out = out;
        this.progress = progress;
        this.style = style;
    }

    public void at(WorkProgress.Stage stage) {
        progress.at(stage, 0, 0);
    }

    /** Whether nobody can read it any more: its output is a full disk, or a program that has ended. */
    public boolean isLost() {
        return out.checkError();
    }

    /** A plan that was written. */
    public void plan(BookResult result, double allS, Optional<KeptFile> backup) {
        heldTold = false;
        say(penalty(result) + changes(result) + ", " + Numbers.fixed(allS, 1) + " s");
        backup.map(kept -> new KeptText(kept).line()).ifPresent(line -> out.println("  " + line));
        out.flush();
        before = Optional.of(result);
    }

    private String penalty(BookResult result) {
        String points = before.map(earlier -> "penalty " + Numbers.fixed(result.plannedPoints(), 2) + " (before "
                        + Numbers.fixed(earlier.plannedPoints(), 2) + ")")
                .orElseGet(() -> "penalty " + Numbers.fixed(result.plannedPoints(), 2) + " planned, "
                        + Numbers.fixed(result.todayPoints(), 2) + " today");
        Set<String> broken = result.plannedBroken();
        return broken.isEmpty()
                ? points
                : points + ", " + style.red(result.verdict().inWords() + " (" + String.join(", ", broken) + ")");
    }

    private String changes(BookResult result) {
        if (before.isEmpty()) {
            return "";
        }
        List<String> changes = changes(before.get(), result);
        if (changes.isEmpty()) {
            return ", the same set-up";
        }
        String rest = changes.size() > MOST_CHANGES ? "; and " + (changes.size() - MOST_CHANGES) + " more" : "";
        return ", " + String.join("; ", changes.subList(0, Math.min(changes.size(), MOST_CHANGES))) + rest;
    }

    /** What differs between two plans of a book, such as {@code 5 wood: setting 3 -> setting 1}. */
    static List<String> changes(BookResult earlier, BookResult later) {
        Comparison both = new Comparison(List.of(new ComparedBook("before", earlier), new ComparedBook("now", later)));
        List<String> changes = new ArrayList<>();
        for (String golfer : both.golfers()) {
            String whose = both.golfers().size() > 1 ? golfer + ", " : "";
            both.differences(golfer).stream()
                    .filter(difference -> difference.state().equals("planned"))
                    .forEach(difference -> changes.add(whose
                            + change(
                                    difference.choices().get(0),
                                    difference.choices().get(1))));
        }
        return changes;
    }

    private static String change(String from, String to) {
        String[] old = from.split(", ", 2);
        String[] now = to.split(", ", 2);
        boolean sameClub = old[0].equals(now[0]) && old.length == 2 && now.length == 2;
        return sameClub ? old[0] + ": " + old[1] + " -> " + now[1] : from + " -> " + to;
    }

    public void problems(List<Message> messages) {
        say(style.red("not planned"));
        new MessageText(messages)
                .toFix()
                .forEach(message -> out.println("  " + style.bold(message.cell()) + ": " + message.text()));
        out.println(WAITING);
        out.flush();
    }

    public void missing() {
        say("the book is missing, or another program has locked it;" + WAITING.substring(1));
    }

    public void fault(Exception fault) {
        say(style.red("not planned: ") + new FaultText(fault).sentence());
        out.println(WAITING);
        out.flush();
    }

    /** A result that cannot be written: one line until it can. */
    public void held(Path target, Exception held) {
        progress.clear();
        if (!heldTold) {
            say(target + " cannot be written (" + new FaultText(held).sentence()
                    + "). Is it open in another program? Close it there; watch tries again every few seconds.");
        }
        heldTold = true;
    }

    private void say(String line) {
        progress.clear();
        out.println(LocalTime.now(ZoneId.systemDefault()).format(TIME) + "  " + line);
        out.flush();
    }
}
