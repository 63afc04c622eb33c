package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.BagOutlook;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.CarryBand;
import org.bagwright.domain.plan.ChoiceSureness;
import org.bagwright.domain.plan.GapOutlook;
import org.bagwright.domain.plan.MeasureNext;
import org.bagwright.domain.plan.Sensitivity;
import org.bagwright.domain.units.Units;

/** The part of the plan document about how a bag answers to small changes, how certain it is and what to measure next. */
final class OutlookJson {
    private final Units units;

    OutlookJson(Units units) {
        this.units = units;
    }

    /** Puts {@code sensitivity}, {@code sureness} and {@code measureNext} into a golfer's node. */
    void put(ObjectNode golfer, BagResult bag) {
        bag.outlook().ifPresent(outlook -> {
            ObjectNode sensitivity = golfer.putObject("sensitivity");
            ArrayNode clubs = sensitivity.putArray("clubs");
            outlook.clubs().forEach(club -> clubs.add(club(clubs.objectNode(), club)));
            sureness(golfer.putObject("sureness"), bag, outlook);
            ArrayNode next = golfer.putArray("measureNext");
            outlook.next().advice().forEach(advice -> advice(next.addObject(), advice));
            golfer.put("measuredEnough", outlook.next().enough());
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
            one.put("chance", percent(gap.chanceRatio()));
            one.put("gapSd", units.distance().fromM(gap.gapSdM()));
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
            average(one, band.average());
        }
        ArrayNode choices = node.putArray("choices");
        outlook.choices().forEach(choice -> choice(choices.addObject(), bag, choice));
    }

    private void average(ObjectNode node, CarryBand.Average average) {
        node.put("carrySd", units.distance().fromM(average.carrySdM()));
        average.changeSdM()
                .ifPresent(sdM -> node.put("changeSd", units.distance().fromM(sdM)));
        node.put("origin", average.origin().words());
        node.put("extended", average.extended());
    }

    private static void choice(ObjectNode node, BagResult bag, ChoiceSureness choice) {
        SlotOptions slot = bag.options().slots().get(choice.index());
        node.put("slot", slot.slot());
        node.put("option", bag.optionsOf(bag.planned()).get(choice.index()).key());
        node.put("bestInCases", percent(choice.plannedRatio()));
        ArrayNode best = node.putArray("best");
        choice.best().forEach(share -> best.addObject()
                .put("option", slot.options().get(share.option()).key())
                .put("cases", percent(share.caseRatio())));
    }

    private static void advice(ObjectNode node, MeasureNext.Advice advice) {
        node.put("slot", advice.slot());
        node.put("club", advice.club());
        node.put("what", advice.what().words());
        advice.setting().ifPresent(setting -> node.put("setting", setting));
        node.put("worthPoints", advice.worthPoints());
        node.put("words", advice.worth().words());
    }

    private static double percent(double ratio) {
        return Math.round(1e4 * ratio) / 100.0;
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
