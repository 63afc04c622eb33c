package org.bagwright.planning;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.bagwright.domain.book.CellChange;
import org.bagwright.domain.book.Message;
import org.bagwright.domain.book.Messages;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.ChartedBook;
import org.bagwright.domain.plan.BagPlan;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BookPlan;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.domain.plan.TodayChange;
import org.bagwright.domain.plan.WorkProgress;
import org.bagwright.files.KeptFile;
import org.bagwright.files.SavedMeanwhileException;
import org.bagwright.files.SourceFile;
import org.bagwright.page.BenchPage;
import org.bagwright.planning.options.BagMaker;
import org.bagwright.planning.outlook.Outlooks;
import org.bagwright.planning.reasons.PlanExplanation;
import org.bagwright.search.BagSearch;
import org.bagwright.search.model.SearchLimits;
import org.bagwright.workbook.result.ResultBook;
import org.bagwright.workbook.result.WrittenCells;

/** The use cases of planning: choose the best options of a charted book, and write the plan. */
public final class Planning {
    private final CompletableFuture<BagSearch> search;
    private final SearchLimits limits;
    private Progress progress = (breaks, points, bound, elapsedS) -> {};
    private WorkProgress work = WorkProgress.NONE;

    /**
     * Makes the search ready on a thread of its own, while the book is read.
     *
     * @param seed the seed of the search; the same seed gives the same plan
     * @param mostS the most time the search may take, seconds, above 0
     */
    public Planning(long seed, double mostS) {
        this.limits = new SearchLimits(seed, mostS);
        this.search = CompletableFuture.supplyAsync(() -> new BagSearch(limits));
    }

    /**
     * Chooses the best option for every club.
     *
     * @throws WorkbookProblems if the book has a problem
     * @throws IOException if the file cannot be read
     */
    public BookResult plan(Path file) throws WorkbookProblems, IOException {
        return plan(new SourceFile(file));
    }

    /** As {@link #plan(Path)} for a book into which the plan is written later. */
    public BookResult plan(SourceFile file) throws WorkbookProblems, IOException {
        return plan(new Charting(file, work).forPlan());
    }

    /** As {@link #plan(SourceFile)} for a book whose options are computed. */
    public BookResult plan(Charted charted) {
        long startNs = System.nanoTime();
        work.at(WorkProgress.Stage.SEARCH, 0, 0);
        ChartedBook book = charted.book();
        BagSearch ready = search.join();
        ready.onProgress(progress::report);
        BookPlan plan = ready.plan(book.options());
        double searchS = (System.nanoTime() - startNs) / 1e9;
        BookResult bare = new BookResult(
                book.book(),
                IntStream.range(0, book.bags().size())
                        .mapToObj(
                                index -> bag(book.bags().get(index), plan.bags().get(index)))
                        .toList(),
                book.options().stock(),
                plan.proof(),
                book.messages(),
                limits.seed(),
                searchS);
        return explained(bare, charted.maker(), ready);
    }

    /** Audits the plan and looks ahead while the search works out the reasons. */
    private BookResult explained(BookResult bare, BagMaker maker, BagSearch ready) {
        CompletableFuture<List<BagResult>> ahead = CompletableFuture.supplyAsync(() -> lookedAhead(bare, maker));
        CompletableFuture<Void> audit =
                CompletableFuture.runAsync(() -> PlanAudit.check(bare, new BagMaker(bare.book(), maker)));
        PlanExplanation reasons = new PlanExplanation(
                ready, bare.book(), bare.stock(), bare.proof().proven(), work);
        List<BagResult> explained = reasons.with(bare.bags());
        joined(audit);
        List<BagResult> looked = joined(ahead);
        List<BagResult> bags = IntStream.range(0, looked.size())
                .mapToObj(index ->
                        looked.get(index).withReasons(explained.get(index).reasons()))
                .toList();
        BookResult result = bare.withBags(bags);
        List<Message> messages = new ArrayList<>(new PlanMessages(result).messages());
        PenaltyMessages.of(result).ifPresent(messages::add);
        messages.addAll(reasons.messages());
        messages.addAll(bare.messages());
        bags.forEach(bag -> messages.addAll(Outlooks.assumptions(bag)));
        return result.withMessages(new Messages(messages).inOrder());
    }

    private List<BagResult> lookedAhead(BookResult bare, BagMaker maker) {
        Outlooks outlooks = new Outlooks(bare.book(), maker, limits.seed());
        return bare.bags().parallelStream()
                .map(outlooks::with)
                .map(bag -> bag.withSessions(maker.flight(bag.golfer()).sessions()))
                .toList();
    }

    /** What another thread worked out; a fault there is a fault here. */
    private static <T> T joined(CompletableFuture<T> part) {
        try {
            return part.join();
        } catch (CompletionException fault) {
            if (fault.getCause() instanceof RuntimeException own) {
                throw own;
            }
            if (fault.getCause() instanceof Error own) {
                throw own;
            }
            throw fault;
        }
    }

    private static BagResult bag(BagOptions options, BagPlan plan) {
        return BagResult.of(
                options, BagSearch.state(options, options.today()), BagSearch.state(options, plan.chosen()));
    }

    /**
     * Reports how far the search is, at most a few times a second.
     *
     * @param report takes hard breaks and penalty of the best plan so far, the bound of its penalty, and the seconds
     */
    public void onProgress(Progress report) {
        progress = report;
    }

    /** Reports the stage of the work. */
    public void onWork(WorkProgress report) {
        work = report;
    }

    WorkProgress work() {
        return work;
    }

    /** Takes reports of how far a search is. */
    @FunctionalInterface
    public interface Progress {

        /** Hard breaks in thousandths, penalty and bound in points, seconds since the start. */
        void report(long bestBreaks, double bestPoints, double boundPoints, double elapsedS);
    }

    /** Whether the time cap ended the last search before it was done. */
    public boolean cappedByTime() {
        return search.join().cappedByTime();
    }

    /** Ends a running search early, from any thread; its best plan so far is its answer. */
    public void stop() {
        search.join().stop();
    }

    /**
     * What was written.
     *
     * @param backup the backup of the file that was replaced, if there was one
     * @param changes every cell of the sheet Clubs that now says what is in the bag today
     * @param wishes every input cell that takes what was changed on the sheet Plan
     * @param shotRows how many rows of the sheet Shots now say with which set-up they were hit
     * @param notWritten what could not be written there, and why
     */
    public record Written(
            Optional<KeptFile> backup,
            List<CellChange> changes,
            List<CellChange> wishes,
            int shotRows,
            List<Message> notWritten) {
        public Written {
            changes = List.copyOf(changes);
            wishes = List.copyOf(wishes);
            notWritten = List.copyOf(notWritten);
        }
    }

    /**
     * Writes the plan into a copy of the book, with what is in the bag today written into the sheet Clubs. A file that
     * is replaced is kept as a backup.
     *
     * @param changes the clubs whose set-up differs from that sheet
     * @param source the book from which the result was made
     * @throws WorkbookProblems if the target is open in another program
     * @throws SavedMeanwhileException if the book was saved since it was read
     * @throws IOException if the result cannot be written, saying why in plain words
     */
    public static Written write(SourceFile source, BookResult result, List<TodayChange> changes, Path target)
            throws WorkbookProblems, IOException {
        AtomicReference<WrittenCells> written = new AtomicReference<>();
        Optional<KeptFile> backup = new Target(target)
                .write(output -> written.set(new ResultBook(source, result).write(changes, output)), source);
        WrittenCells cells = written.get();
        return new Written(backup, cells.changes(), cells.wishes(), cells.shotRows(), cells.notWritten());
    }

    /**
     * Writes the page of a planned book. A file that is replaced is kept as a backup.
     *
     * @param source the book from which the result was made
     * @return the backup, if there was one
     * @throws WorkbookProblems if the target is open in another program
     * @throws SavedMeanwhileException if the book was saved since it was read
     * @throws IOException if the page cannot be written, saying why in plain words
     */
    public static Optional<KeptFile> writePage(SourceFile source, BookResult result, Path target)
            throws WorkbookProblems, IOException {
        return new Target(target).write(new BenchPage(result)::write, source);
    }
}
