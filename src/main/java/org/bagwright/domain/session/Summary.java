package org.bagwright.domain.session;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.bagwright.domain.book.Shot;

/**
 * The mean and the spread of one figure over some shots, in the unit of {@link ShotFigure}.
 *
 * @param meanMeasureUnits the plain mean; a row that averages some shots counts as many
 * @param spreadMeasureUnits the standard deviation of single shots; empty where the rows do not tell it
 */
public record Summary(double meanMeasureUnits, OptionalDouble spreadMeasureUnits) {

    /** Empty where no shot has the figure. */
    static Optional<Summary> of(ShotFigure figure, List<Shot> shots) {
        List<Shot> having = shots.stream()
                .filter(shot -> figure.of(shot.measured()).isPresent())
                .toList();
        int count = count(having);
        if (count == 0) {
            return Optional.empty();
        }
        double sum = 0;
        for (Shot shot : having) {
            sum += shot.series().shots() * value(figure, shot);
        }
        double mean = sum / count;
        double squares = 0;
        int degreesOfFreedom = having.size() - 1;
        for (Shot shot : having) {
            double off = value(figure, shot) - mean;
            squares += shot.series().shots() * off * off;
            if (figure == ShotFigure.CARRY && shot.series().carrySpreadM().isPresent()) {
                double spreadM = shot.series().carrySpreadM().getAsDouble();
                squares += (shot.series().shots() - 1) * spreadM * spreadM;
                degreesOfFreedom += shot.series().shots() - 1;
            }
        }
        return Optional.of(new Summary(
                mean,
                degreesOfFreedom > 0
                        ? OptionalDouble.of(Math.sqrt(squares / degreesOfFreedom))
                        : OptionalDouble.empty()));
    }

    private static double value(ShotFigure figure, Shot shot) {
        return figure.of(shot.measured()).orElseThrow();
    }

    /** How many shots these rows are. */
    static int count(List<Shot> shots) {
        return shots.stream().mapToInt(shot -> shot.series().shots()).sum();
    }
}
