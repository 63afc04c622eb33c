package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalDouble;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.session.ClubSession;
import org.bagwright.domain.session.Forecast;
import org.bagwright.domain.session.ShotFigure;
import org.bagwright.domain.units.Units;

/**
 * The part of the plan document about the days on which shots were hit.
 *
 * @param units in which distances, speeds and lengths are given
 */
record SessionsJson(Units units) {
    /** Puts {@code sessions} into a golfer's node: by club and day, empty where no shot has a date. */
    void put(ObjectNode golfer, BagResult bag) {
        ArrayNode sessions = golfer.putArray("sessions");
        bag.sessions().forEach(session -> put(sessions.addObject(), session));
    }

    private void put(ObjectNode node, ClubSession session) {
        node.put("slot", session.club().slot());
        node.put("club", session.club().name());
        node.put("date", session.date().map(String::valueOf).orElse(null));
        node.put("setUp", session.setUpInWords(units.length()));
        node.put("shots", session.count());
        for (ShotFigure figure : ShotFigure.values()) {
            session.summary(figure).ifPresent(summary -> {
                ObjectNode one = node.putObject(figure.key());
                one.put(
                        "mean",
                        figure.shown(OptionalDouble.of(summary.meanMeasureUnits()), units)
                                .getAsDouble());
                figure.shown(summary.spreadMeasureUnits(), units).ifPresent(spread -> one.put("spread", spread));
            });
        }
        session.forecast().ifPresent(forecast -> put(node, forecast));
        node.put("cameOut", session.inWords(units.distance()));
    }

    private void put(ObjectNode node, Forecast forecast) {
        node.put("predicted", units.distance().fromM(forecast.predictedM()));
        node.put("day", units.distance().fromM(forecast.dayM()));
        node.put("offBy", units.distance().fromM(forecast.offM()));
        node.put("range95", units.distance().fromM(forecast.rangeM()));
        node.put("asPredicted", forecast.cameOut());
    }
}
