package org.bagwright.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.bagwright.ResultCells;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.units.Swingweight;

/** What one row of the sheet Plan must show live. */
final class LiveRow {
    private static final double G_PER_OZ = 28.349523125;

    private LiveRow() {}

    /** Checks every number of a live row against the option it should show. */
    static void expect(XSSFWorkbook live, int row, Option option, Option today) {
        Optional<ShotPrediction> shot = option.shot();
        Optional<Option> carried = Optional.of(option).filter(made -> !made.isEmpty());
        number(live, row, "Live loft [deg]", carried.map(made -> made.pose().gaugeLoftDeg()));
        number(live, row, "Live lie [deg]", carried.map(made -> made.pose().gaugeLieDeg()));
        number(live, row, "Live sits [deg]", carried.map(made -> made.pose().sitsClosedDeg()));
        number(live, row, "Live contact shift [mm forward]", carried.map(made -> made.pose()
                .address()
                .contactShiftMm()));
        number(live, row, "Live shaft turn [deg]", carried.map(made -> made.pose()
                .shaftTurnDeg()));
        number(live, row, "Live start line [deg closed]", shot.map(ShotPrediction::startClosedDeg));
        number(live, row, "Live launch [deg]", shot.map(ShotPrediction::launchDeg));
        number(live, row, "Live spin [rpm]", shot.map(ShotPrediction::spinRpm));
        number(live, row, "Live landing [deg]", shot.map(ShotPrediction::landingDeg));
        number(live, row, "Live carry [yd]", shot.map(made -> made.carryM() / 0.9144));
        number(live, row, "Live changes", Optional.of((double) option.changes()));
        build(live, row, carried, today);
        String fit = ResultCells.plan(live, row, "Live fit").getStringCellValue();
        assertEquals(option.isEmpty(), fit.equals("left out"), fit);
    }

    private static void build(XSSFWorkbook live, int row, Optional<Option> carried, Option today) {
        Optional<BuildNumbers> build = carried.map(Option::build);
        Optional<BuildNumbers> before = today.isEmpty() ? Optional.empty() : Optional.of(today.build());
        number(live, row, "Live length [in]", build.map(made -> made.lengthM() / 0.0254));
        number(live, row, "Live total mass [g]", build.map(made -> made.totalMassKg() * 1000));
        number(
                live,
                row,
                "Length change [in]",
                build.flatMap(made -> before.map(old -> (made.lengthM() - old.lengthM()) / 0.0254)));
        number(
                live,
                row,
                "Head mass change [g]",
                build.flatMap(made -> before.map(old -> (made.headMassKg() - old.headMassKg()) * 1000)));
        assertEquals(
                build.map(made -> made.swingweight().text()).orElse(""),
                ResultCells.plan(live, row, "Live swing- weight").getStringCellValue());
        number(live, row, "To swingweight target, at head [g]", carried.flatMap(LiveRow::gramsAtHead));
    }

    /** A swingweight point is 1.75 oz in about a fulcrum 14 in from the butt. */
    private static Optional<Double> gramsAtHead(Option option) {
        double lengthIn = option.build().lengthM() / 0.0254;
        return option.club()
                .targets()
                .swingweight()
                .map(Swingweight::momentOzIn)
                .map(target -> (target - option.build().swingweight().momentOzIn()) * G_PER_OZ / (lengthIn - 14));
    }

    static void number(XSSFWorkbook book, int row, String heading, Optional<Double> expected) {
        Cell cell = ResultCells.plan(book, row, heading);
        boolean numeric = cell != null
                && (cell.getCellType() == CellType.NUMERIC
                        || (cell.getCellType() == CellType.FORMULA
                                && cell.getCachedFormulaResultType() == CellType.NUMERIC));
        String where = heading + " of row " + row;
        assertEquals(expected.isPresent(), numeric, where + ": " + cell);
        expected.ifPresent(
                value -> assertEquals(value, cell.getNumericCellValue(), 1e-9 * Math.max(1, Math.abs(value)), where));
    }
}
