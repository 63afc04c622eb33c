package org.bagwright.workbook.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.BookSketch;
import org.bagwright.ResultCells;
import org.bagwright.cli.text.Terminal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The limits of how a club sits, as a person may write them on the sheet Plan; closed counts above 0, open below. */
@Tag("analytic")
class WrittenLooksTest {
    private static final Map<Object, Double> OPEN =
            Map.of(1.5, -1.5, -1.5, -1.5, "2 open", -2.0, "2 closed", 2.0, "0.5 Closed", 0.5, "square", 0.0);
    private static final Map<Object, Double> CLOSED =
            Map.of(1.5, 1.5, -1.5, 1.5, "2 open", -2.0, "2 closed", 2.0, "1 Open", -1.0, "square", 0.0);

    @TempDir
    Path folder;

    @Test
    void look_isUnderstoodHoweverItIsWritten() throws Exception {
        Path result = folder.resolve("plan.xlsx");
        Path book = new BookSketch()
                .sheet("Golfers", "Golfer, Driver speed, Most open, Most closed")
                .row("Golfer A", 95, 3, 3)
                .sheet("Clubs", "Golfer, Slot, Club, Kind, Loft, Lie")
                .row("Golfer A", 1, "Driver", "driver", 10.5, 58)
                .write(folder.resolve("bag.xlsx"));
        Terminal run = Terminal.run("plan", book, "-o", result);
        assertEquals(0, run.code(), run.err());
        try (XSSFWorkbook plan = ResultCells.open(result)) {
            OPEN.forEach((written, deg) -> assertEquals(
                    deg, limitDeg(plan, PlanColumn.MOST_OPEN, PlanColumn.OPEN_LIMIT, written), "" + written));
            CLOSED.forEach((written, deg) -> assertEquals(
                    deg, limitDeg(plan, PlanColumn.MOST_CLOSED, PlanColumn.CLOSED_LIMIT, written), "" + written));
        }
    }

    private static double limitDeg(XSSFWorkbook plan, PlanColumn column, PlanColumn limit, Object written) {
        Cell cell = ResultCells.plan(plan, 0, column.heading());
        if (written instanceof Double number) {
            cell.setCellValue(number);
        } else {
            cell.setCellValue(written.toString());
        }
        return ResultCells.live(plan, 0, limit.heading()).getNumberValue();
    }
}
