package org.bagwright.workbook.cells;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Calculates formulas of a book with the library, which knows most of them. One that it does not know, that is too deep for
 * it or that takes too long gives nothing; after one that takes too long no other is calculated.
 */
final class Calculator {
    private static final long MOST_MS = 5000;
    private static final long IDLE_MS = 100;

    private final long mostMs;
    private final FormulaEvaluator evaluator;
    /** On a thread of its own, since the library cannot be stopped. */
    private final ThreadPoolExecutor thread;

    private boolean stuck;

    Calculator(XSSFWorkbook workbook) {
        this(workbook, MOST_MS);
    }

    /** @param mostMs how long one formula may take, milliseconds */
    Calculator(XSSFWorkbook workbook, long mostMs) {
        this.mostMs = mostMs;
        evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        thread = new ThreadPoolExecutor(1, 1, IDLE_MS, TimeUnit.MILLISECONDS, new LinkedBlockingQueue<>(), work -> {
            Thread made = new Thread(work, "formulas");
            made.setDaemon(true);
            return made;
        });
        thread.allowCoreThreadTimeOut(true);
    }

    /** The value of a formula. */
    Optional<CellValue> value(Cell cell) {
        return inTime(() -> evaluator.evaluate(cell));
    }

    /** Calculates a formula and saves its value with it; where that is not possible the old value stays. */
    void save(Cell cell) {
        inTime(() -> evaluator.evaluateFormulaCell(cell));
    }

    private <T> Optional<T> inTime(Callable<T> work) {
        if (stuck) {
            return Optional.empty();
        }
        Future<T> working = thread.submit(work);
        try {
            return Optional.ofNullable(working.get(mostMs, TimeUnit.MILLISECONDS));
        } catch (TimeoutException endless) {
            stuck = true;
        } catch (ExecutionException unknownOrTooDeep) {
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return Optional.empty();
    }
}
