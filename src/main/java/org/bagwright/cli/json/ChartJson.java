package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.ChartedBook;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.units.Units;

/** Every option of every club as a machine-readable document. Distances and speeds are in the book's units. */
public final class ChartJson {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final double G_PER_KG = 1000;
    private static final double MM_PER_M = 1000;
    private static final double G_CM2_PER_KG_M2 = 1e7;

    private final ChartedBook charted;
    private final Units units;

    public ChartJson(ChartedBook charted) {
        this.charted = charted;
        this.units = charted.book().settings().units();
    }

    public ObjectNode document() {
        ObjectNode document = NODES.objectNode();
        document.set("units", new UnitsJson(units).node());
        ArrayNode clubs = document.putArray("clubs");
        for (BagOptions bag : charted.bags()) {
            for (SlotOptions slot : bag.slots()) {
                slot.clubs().forEach(club -> clubs.add(club(slot, club)));
            }
        }
        document.set("messages", new MessagesJson(charted.messages()).array());
        return document;
    }

    private ObjectNode club(SlotOptions slot, Club club) {
        ObjectNode node = NODES.objectNode();
        node.put("golfer", club.golfer());
        node.put("slot", club.slot());
        node.put("club", club.name());
        node.put("kind", club.kind().label());
        node.put("inBag", club.inBag());
        node.put("slotMayBeEmpty", slot.options().stream().anyMatch(Option::isEmpty));
        node.put("today", slot.today().key());
        ArrayNode options = node.putArray("options");
        slot.optionsOf(club).forEach(option -> options.add(option(option)));
        return node;
    }

    private ObjectNode option(Option option) {
        ObjectNode node = NODES.objectNode();
        node.put("option", option.key());
        node.put("setting", option.choice().settingText());
        node.put("weighting", option.choice().weighting().orElse(null));
        node.put("loftBend", option.choice().bend().loftDeg());
        node.put("lieBend", option.choice().bend().lieDeg());
        putPose(node, option.setup().orElseThrow());
        option.shot().ifPresent(shot -> putShot(node, shot));
        putBuild(node, option.build());
        node.put("changes", option.changes());
        node.put("ownPenalty", option.terms().totalPoints());
        node.put("open", option.open());
        return node;
    }

    private static void putPose(ObjectNode node, ClubSetup setup) {
        PoseNumbers pose = setup.pose();
        node.put("gaugeLoftDeg", pose.gaugeLoftDeg());
        node.put("gaugeLieDeg", pose.gaugeLieDeg());
        node.put("addressLoftDeg", pose.address().loftDeg());
        node.put("faceHeadingDeg", pose.address().faceHeadingDeg());
        node.put("deliveredFaceClosedDeg", setup.deliveredFaceDeg());
        node.put("soleTiltDeg", pose.address().soleTiltDeg());
        node.put("toeGapMm", pose.address().toeGapMm());
        node.put("sitsClosedDeg", pose.sitsClosedDeg());
        node.put("loftAsItSitsDeg", pose.resting().loftDeg());
        node.put("contactShiftMm", pose.address().contactShiftMm());
        node.put("contactShiftToToeMm", pose.address().contactShiftToToeMm());
        node.put("shaftTurnDeg", pose.shaftTurnDeg());
    }

    private void putShot(ObjectNode node, ShotPrediction shot) {
        node.put("launchDeg", shot.launchDeg());
        node.put("spinRpm", shot.spinRpm());
        node.put("ballSpeed", units.speed().fromMps(shot.ballSpeedMps()));
        node.put("carry", units.distance().fromM(shot.carryM()));
        node.put("landingDeg", shot.landingDeg());
        node.put("startClosedDeg", shot.startClosedDeg());
        node.put("sidewaysClosed", units.distance().fromM(shot.sidewaysClosedM()));
    }

    private static void putBuild(ObjectNode node, BuildNumbers build) {
        node.put("swingweightPoints", build.swingweight().scalePoints());
        node.put("swingweight", build.swingweight().text());
        node.put("totalMassG", build.totalMassKg() * G_PER_KG);
        node.put("headMassG", build.headMassKg() * G_PER_KG);
        node.put("clubInertiaKgCm2", build.clubInertiaKgCm2());
        node.put("headInertiaGCm2", build.headInertiaKgM2() * G_CM2_PER_KG_M2);
        node.put("balancePointMm", build.balancePointM() * MM_PER_M);
    }
}
