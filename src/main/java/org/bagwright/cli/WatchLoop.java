package org.bagwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import org.bagwright.cli.text.WatchText;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.WorkProgress;
import org.bagwright.files.FileWatch;
import org.bagwright.files.KeptFile;
import org.bagwright.files.SourceFile;
import org.bagwright.planning.PlanTarget;
import org.bagwright.planning.Planning;
import org.bagwright.planning.WorkbookProblems;

/** Plans a book each time it has been saved, one plan after another, until it is stopped. */
final class WatchLoop {
    private static final long IDLE_MS = 60_000;
    private static final long AGAIN_MS = 3000;
    private static final long MOST_WAIT_S = 30;

    private final Planning planning;
    private final FileWatch watch;
    private final PlanTarget target;
    private final WatchText text;
    private final ReentrantLock writing = new ReentrantLock();
    private Optional<Planned> unwritten = Optional.empty();
    private volatile boolean stopped;

    /** A plan and the copy of the book it was made from. */
    private record Planned(SourceFile copy, BookResult result, long startNs) {}

    WatchLoop(Planning planning, FileWatch watch, PlanTarget target, WatchText text) {
        this.planning = planning;
        this.watch = watch;
        this.target = target;
        this.text = text;
    }

    void run() throws IOException {
        while (!stopped && !text.isLost()) {
            Optional<FileWatch.Saved> saved = watch.next(unwritten.isPresent() ? AGAIN_MS : IDLE_MS);
            if (saved.isPresent() && saved.get().copy().isEmpty()) {
                text.missing();
            } else if (saved.isPresent()) {
                unwritten = saved.get().copy().flatMap(this::planned);
            }
            unwritten.ifPresent(this::write);
        }
    }

    /** The plan of a copy of the book; empty where there is none, after a line that says so. */
    private Optional<Planned> planned(Path copy) {
        long startNs = System.nanoTime();
        try {
            SourceFile source = new SourceFile(copy);
            return Optional.of(new Planned(source, planning.plan(source), startNs));
        } catch (WorkbookProblems wrong) {
            tell(() -> text.problems(wrong.messages()));
        } catch (IOException | RuntimeException fault) {
            tell(() -> text.fault(fault));
        }
        return Optional.empty();
    }

    private void tell(Runnable report) {
        if (!stopped) {
            report.run();
        }
    }

    private void write(Planned planned) {
        writing.lock();
        try {
            if (!stopped) {
                text.at(WorkProgress.Stage.WRITING);
                Optional<KeptFile> backup = target.write(planned.copy(), planned.result());
                unwritten = Optional.empty();
                text.plan(planned.result(), (System.nanoTime() - planned.startNs()) / 1e9, backup);
            }
        } catch (IOException held) {
            text.held(target.file(), held);
        } catch (RuntimeException fault) {
            unwritten = Optional.empty();
            text.fault(fault);
        } finally {
            writing.unlock();
        }
    }

    /** Ends the loop, from any thread, and waits until a file that is being written is whole. */
    void stop() {
        stopped = true;
        watch.stop();
        planning.stop();
        try {
            if (writing.tryLock(MOST_WAIT_S, TimeUnit.SECONDS)) {
                writing.unlock();
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
