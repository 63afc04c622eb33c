package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.CarryBand;
import org.bagwright.domain.plan.GapOutlook;
import org.bagwright.domain.plan.Sensitivity;
import org.bagwright.domain.units.Units;

/** The part of the plan document about how a bag answers to small changes and how certain its gaps are. */
final class OutlookJson {
    private final Units units;

    OutlookJson(Units units) {
        this.units = units;
    }

    /** Puts {@code sensitivity} and {@code sureness} into a golfer's node. */
    void put(ObjectNode golfer, BagResult bag) {
        bag.outlook().ifPresent(outlook -> {
            ObjectNode sensitivity = golfer.putObject("sensitivity");
            sensitivity.put("otherBallModel", outlook.otherModel().label());
            ArrayNode clubs = sensitivity.putArray("clubs");
            outlook.clubs().forEach(club -> clubs.add(club(clubs.objectNode(), club)));
            ArrayNode moves = sensitivity.putArray("gaps");
            outlook.gaps().forEach(gap -> named(moves.addObject(), bag, gap)
                    .put("otherModelMove", units.distance().fromM(gap.otherModelMoveM())));
            sureness(golfer.putObject("sureness"), bag, outlook);
        });
    }

    private ObjectNode club(ObjectNode node, Sensitivity club) {
        node.put("slot", club.slot());
        node.put("club", club.club());
        node.put("presentedLoftDeg", club.presentedLoftDeg());
        node.put("carryPerLoftDeg", units.distance().fromM(club.carryPerLoftDegM()));
        node.put(
                "carryPerHeadSpeed",
                units.distance().fromM(club.carryPerHeadMpsM()) * units.speed().toMps(1));
        club.best().loftDeg().ifPresent(loftDeg -> node.put("bestLoftDeg", loftDeg));
        node.put("loftForCarry", club.best().advice().name().toLowerCase(Locale.ROOT));
        node.put("facePerLieDeg", club.facePerLieDegRatio());
        return node;
    }

    private void sureness(ObjectNode node, BagResult bag, BagOutlook outlook) {
        ArrayNode gaps = node.putArray("gaps");
        for (GapOutlook gap : outlook.gaps()) {
            ObjectNode one = named(gaps.addObject(), bag, gap);
            one.put("chance", Math.round(1e4 * gap.chanceRatio()) / 100.0);
            limit(one, "least", gap.leastM());
            limit(one, "most", gap.mostM());
        }
        ArrayNode clubs = node.putArray("clubs");
        for (CarryBand band : outlook.bands()) {
            ObjectNode one = clubs.addObject();
            one.put("slot", band.slot());
            one.put("club", band.club());
            one.put("carryLow", units.distance().fromM(band.lowM()));
            one.put("carryHigh", units.distance().fromM(band.highM()));
            one.put("spread", units.distance().fromM(band.spreadM()));
            one.put("spreadAssumed", band.spreadAssumed());
        }
    }

    private void limit(ObjectNode node, String field, double valueM) {
        if (Double.isFinite(valueM)) {
            node.put(field, units.distance().fromM(valueM));
        }
    }

    private static ObjectNode named(ObjectNode node, BagResult bag, GapOutlook gap) {
        node.put("from", bag.optionsOf(bag.planned()).get(gap.fromIndex()).clubText());
        node.put("to", bag.optionsOf(bag.planned()).get(gap.toIndex()).clubText());
        return node;
    }
}
