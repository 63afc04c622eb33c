package org.bagwright.search.exact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.bagwright.search.score.Cost;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** When a search has to end, and what it tells meanwhile. */
@Tag("regression")
class SearchClockTest {
    private static final Cost DEAR = new Cost(1, 500, 8_000_000);
    private static final Cost CHEAP = new Cost(0, 500, 7_000_000);

    private record Told(long breaks, double points, double boundPoints) {}

    private final List<Told> told = new ArrayList<>();
    private final List<Cost> better = new ArrayList<>();

    private SearchClock clock() {
        SearchClock clock = new SearchClock(1000);
        clock.onProgress((breaks, points, bound, elapsedS) -> told.add(new Told(breaks, points, bound)));
        clock.onBetter(better::add);
        return clock;
    }

    @Test
    void plan_isToldWithItsBreaksPointsAndBound() {
        clock().report(CHEAP, new Cost(0, 500, 2_500_000));
        clock().report(DEAR, new Cost(1, 500, 2_500_000));
        assertEquals(List.of(new Told(500, 7, 2.5), new Told(1500, 8, 2.5)), told);
    }

    /** While fewer breaks seem possible, the points of the bound belong to another sort of plan. */
    @Test
    void boundWithFewerBreaks_tellsNothingOfPoints() {
        clock().report(CHEAP, new Cost(0, 499, 6_000_000));
        clock().report(DEAR, new Cost(0, 500, 6_000_000));
        clock().report(CHEAP, new Cost(0, 500, -6_000_000));
        assertEquals(
                List.of(0.0, 0.0, 0.0), told.stream().map(Told::boundPoints).toList());
    }

    @Test
    void reports_areToldFourTimesASecondAtMost_andBetterPlansEachTime() throws InterruptedException {
        SearchClock clock = clock();
        clock.report(DEAR, Cost.NONE);
        long startNs = System.nanoTime();
        clock.report(DEAR, Cost.NONE);
        clock.report(CHEAP, Cost.NONE);
        boolean quick = System.nanoTime() - startNs < TimeUnit.MILLISECONDS.toNanos(200);
        assertTrue(!quick || told.size() == 1, told.toString());
        assertEquals(List.of(DEAR, CHEAP), better);
        TimeUnit.MILLISECONDS.sleep(300);
        int before = told.size();
        clock.report(CHEAP, Cost.NONE);
        assertEquals(before + 1, told.size());
        assertEquals(2, better.size());
        clock.start(1000);
        clock.report(CHEAP, Cost.NONE);
        assertEquals(before + 2, told.size(), "a new start is told at once");
        assertEquals(3, better.size());
    }

    @Test
    void part_hasItsShareAndEndsWithTheWhole() {
        SearchClock whole = new SearchClock(1000);
        SearchClock part = whole.part(0.25);
        assertTrue(part.leftS() > 200 && part.leftS() <= 250, "left " + part.leftS());
        whole.leave(0);
        assertTrue(part.isOver());
        assertFalse(part.isStopped());
        assertTrue(whole.isOver());
    }

    @Test
    void leave_shortensAndNeverLengthens() {
        SearchClock clock = new SearchClock(1000);
        clock.leave(5000);
        assertTrue(clock.leftS() <= 1000);
        clock.leave(10);
        assertTrue(clock.leftS() <= 10 && !clock.isOver());
        clock.start(Double.POSITIVE_INFINITY);
        assertTrue(clock.leftS() > 1e8 && clock.leftS() <= 1e9, "left " + clock.leftS());
    }

    @Test
    void stop_endsItForGoodAndRunsWhatIsToBeStopped() {
        SearchClock clock = new SearchClock(1000);
        List<String> ran = new ArrayList<>();
        clock.whenStopped(() -> ran.add("first"));
        assertEquals(List.of(), ran);
        clock.stop();
        assertTrue(clock.isStopped() && clock.isOver());
        clock.whenStopped(() -> ran.add("later"));
        assertEquals(List.of("first", "later"), ran);
        clock.start(1000);
        assertTrue(clock.isOver());
    }

    @Test
    void endings_byTheClockAreThoseThatAnotherRunMayNotHave() {
        assertEquals(
                List.of(ExactEnding.CAP, ExactEnding.STOPPED),
                List.of(ExactEnding.values()).stream()
                        .filter(ExactEnding::byClock)
                        .toList());
    }

    @Test
    void meter_endsAtItsStepsOrBetweenThemByTheClock() {
        Meter meter = new Meter(1_000_000, new SearchClock(1000)).within(100);
        meter.spend(100);
        assertEquals(0, meter.left());
        assertEquals(ExactEnding.STEPS, ended(meter, 1));
        assertEquals(ExactEnding.CAP, ended(new Meter(Long.MAX_VALUE, new SearchClock(0)), 600_000));
        SearchClock stopped = new SearchClock(1000);
        stopped.stop();
        assertEquals(ExactEnding.STOPPED, ended(new Meter(Long.MAX_VALUE, stopped).share(Long.MAX_VALUE), 600_000));
    }

    private static ExactEnding ended(Meter meter, long steps) {
        try {
            meter.spend(steps);
        } catch (Meter.Ended end) {
            return end.why();
        }
        throw new AssertionError("goes on after " + steps + " steps");
    }
}
