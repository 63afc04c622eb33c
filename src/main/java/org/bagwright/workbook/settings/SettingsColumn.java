package org.bagwright.workbook.settings;

import java.util.OptionalDouble;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.Targets;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.units.Swingweight;
import org.bagwright.domain.units.Units;

/** The columns of the sheet Settings, in order. */
public enum SettingsColumn implements SheetColumn {
    GOLFER("Golfer", 14, "", OptionNumber.NONE),
    SLOT("Slot", 6, "0", OptionNumber.NONE),
    CLUB("Club", 16, "", OptionNumber.NONE),
    SETTING("Setting", 9, "", OptionNumber.NONE),
    WEIGHTING("Weighting", 11, "", OptionNumber.NONE),
    LOFT_BEND("Loft bend [deg]", 9, "0.0##", OptionNumber.setup(setup -> setup.choice()
            .bend()
            .loftDeg())),
    LIE_BEND("Lie bend [deg]", 9, "0.0##", OptionNumber.setup(setup -> setup.choice()
            .bend()
            .lieDeg())),
    LOFT("Gauge loft [deg]", 9, "0.00", OptionNumber.pose(PoseNumbers::gaugeLoftDeg)),
    LIE("Gauge lie [deg]", 9, "0.00", OptionNumber.pose(PoseNumbers::gaugeLieDeg)),
    ADDRESS_LOFT("Address loft [deg]", 9, "0.00", OptionNumber.pose(pose -> pose.address()
            .loftDeg())),
    START_LINE("Face heading at address [deg closed]", 11, "0.00", OptionNumber.pose(pose -> pose.address()
            .faceHeadingDeg())),
    DELIVERED_FACE("Delivered face [deg closed]", 11, "0.00", OptionNumber.setup(ClubSetup::deliveredFaceDeg)),
    SOLE_TILT(
            "Toe up [deg]", 9, "0.00", OptionNumber.pose(pose -> pose.address().soleTiltDeg())),
    TOE_GAP("Gap at the toe [mm]", 9, "0.0", OptionNumber.pose(pose -> pose.address()
            .toeGapMm())),
    SITS(
            "Sits closed [deg]",
            9,
            "0.00",
            OptionNumber.pose(PoseNumbers::sitsClosedDeg).orZero()),
    LOFT_SITS("Loft as it sits [deg]", 9, "0.00", OptionNumber.pose(pose -> pose.resting()
            .loftDeg())),
    CONTACT("Contact shift [mm forward]", 10, "0.0", OptionNumber.pose(pose -> pose.address()
            .contactShiftMm())),
    SHAFT_TURN("Shaft turn [deg]", 9, "0", OptionNumber.pose(PoseNumbers::shaftTurnDeg)),
    LAUNCH("Launch [deg]", 9, "0.0", OptionNumber.shot(ShotPrediction::launchDeg)),
    SPIN("Spin [rpm]", 9, "0", OptionNumber.shot(ShotPrediction::spinRpm)),
    BALL_SPEED("Ball speed [SPEED]", 9, "0.0", OptionNumber.shot((shot, units) -> units.speed()
            .fromMps(shot.ballSpeedMps()))),
    CARRY("Carry [DIST]", 9, "0.0", OptionNumber.shot((shot, units) -> units.distance()
            .fromM(shot.carryM()))),
    CARRY_SPREAD(
            "Carry +- [DIST]",
            9,
            "0.0",
            OptionNumber.doubt((doubt, perM) -> CarryDoubt.HALF_80_SDS * Math.sqrt(doubt.varianceM2()) * perM)),
    CHANGE_SPREAD("Change of carry +- [DIST]", 9, "0.0", OptionNumber.NONE),
    LANDING("Landing angle [deg]", 9, "0.0", OptionNumber.shot(ShotPrediction::landingDeg)),
    START("Start line [deg closed]", 9, "0.00", OptionNumber.shot(ShotPrediction::startClosedDeg)),
    SIDEWAYS("Sideways, closed + [DIST]", 10, "0.0", OptionNumber.shot((shot, units) -> units.distance()
            .fromM(shot.sidewaysClosedM()))),
    LENGTH("Length [LEN]", 9, "0.0##", OptionNumber.build((build, units) -> units.length()
            .fromM(build.lengthM()))),
    HEAD_MASS("Head mass [g]", 9, "0.0", OptionNumber.build(build -> build.headMassKg() * 1000)),
    TOTAL_MASS("Total mass [g]", 9, "0.0", OptionNumber.build(build -> build.totalMassKg() * 1000)),
    SWINGWEIGHT("Swingweight [points from A0]", 12, "0.00", OptionNumber.build(build -> build.swingweight()
            .scalePoints())),
    SWINGWEIGHT_TEXT("Swingweight", 12, "", OptionNumber.NONE),
    CLUB_INERTIA("Club inertia [kg cm2]", 9, "0", OptionNumber.build(BuildNumbers::clubInertiaKgCm2)),
    HEAD_INERTIA("Head inertia [g cm2]", 9, "0", OptionNumber.build(build -> build.headInertiaKgM2() * 1e7)),
    MATCH_GROUP("Match group", 11, "", OptionNumber.NONE),
    MATCH_VALUE("Match value [MATCH]", 9, "0.00", SettingsColumn::matchValue),
    LOFT_TARGET("Loft target [deg]", 9, "0.0##", OptionNumber.target(Targets::loftDeg)),
    LIE_TARGET("Lie target [deg]", 9, "0.0##", OptionNumber.setup(setup -> setup.club()
            .lieTargetDeg())),
    CARRY_TARGET("Carry target [DIST]", 9, "0.0##", SettingsColumn::carryTarget),
    SWINGWEIGHT_TARGET("Swingweight target [points from A0]", 12, "0.0##", SettingsColumn::swingweightTarget),
    TARGET_TEXT("Swingweight target", 12, "", OptionNumber.NONE),
    GAP_WISH("Gap wish [DIST]", 9, "0.0", OptionNumber.NONE),
    GAP_LEAST("Gap least [DIST]", 9, "0.0", OptionNumber.limit(LimitKind.GAP_LEAST)),
    GAP_MOST("Gap most [DIST]", 9, "0.0", OptionNumber.limit(LimitKind.GAP_MOST)),
    CARRY_LEAST("Carry least [DIST]", 9, "0.0", OptionNumber.limit(LimitKind.CARRY_LEAST)),
    CARRY_MOST("Carry most [DIST]", 9, "0.0", OptionNumber.limit(LimitKind.CARRY_MOST)),
    LANDING_LEAST("Landing least [deg]", 9, "0.0", OptionNumber.limit(LimitKind.LANDING_LEAST)),
    CHANGES("Changes", 9, "0", OptionNumber.always(Option::changes)),
    OWN_PENALTY("Own penalty [points]", 10, "0.00", OptionNumber.always(option -> option.terms()
            .totalPoints())),
    OPEN("May be planned", 9, "", OptionNumber.NONE),
    CLOSED("Closed by", 16, "", OptionNumber.NONE),
    KEY("Option", 42, "", OptionNumber.NONE),
    DOUBT_1("Doubt 1 [DIST]", 9, "0.000", OptionNumber.doubt((doubt, perM) -> doubt.sharedM(0) * perM)),
    DOUBT_2("Doubt 2 [DIST]", 9, "0.000", OptionNumber.doubt((doubt, perM) -> doubt.sharedM(1) * perM)),
    DOUBT_3("Doubt 3 [DIST]", 9, "0.000", OptionNumber.doubt((doubt, perM) -> doubt.sharedM(2) * perM)),
    DOUBT_4("Doubt 4 [DIST]", 9, "0.000", OptionNumber.doubt((doubt, perM) -> doubt.sharedM(3) * perM)),
    DOUBT_5("Doubt 5 [DIST]", 9, "0.000", OptionNumber.doubt((doubt, perM) -> doubt.sharedM(4) * perM)),
    DOUBT_6("Doubt 6 [DIST]", 9, "0.000", OptionNumber.doubt((doubt, perM) -> doubt.sharedM(5) * perM)),
    DOUBT_7("Doubt 7 [DIST]", 9, "0.000", OptionNumber.doubt((doubt, perM) -> doubt.sharedM(6) * perM)),
    DOUBT_8("Doubt 8 [DIST]", 9, "0.000", OptionNumber.doubt((doubt, perM) -> doubt.sharedM(7) * perM)),
    OWN_VARIANCE(
            "Own variance [DIST2]",
            9,
            "0.000",
            OptionNumber.doubt((doubt, perM) -> doubt.ownVarianceM2() * perM * perM));

    private final String heading;
    private final double widthChars;
    public final String format;
    public final OptionNumber number;

    SettingsColumn(String heading, double widthChars, String format, OptionNumber number) {
        this.heading = heading;
        this.widthChars = widthChars;
        this.format = format;
        this.number = number;
    }

    /** Whether it is one of those with the factors of doubt, which only formulas need. */
    boolean isFactor() {
        return compareTo(DOUBT_1) >= 0;
    }

    @Override
    public int index() {
        return ordinal();
    }

    @Override
    public String heading() {
        return heading;
    }

    @Override
    public double widthChars() {
        return widthChars;
    }

    private static OptionalDouble matchValue(Option option, Units units) {
        return option.setup()
                .flatMap(ClubSetup::match)
                .map(MatchValue::valueMeasureUnits)
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }

    private static OptionalDouble carryTarget(Option option, Units units) {
        OptionalDouble targetM = OptionNumber.target(Targets::carryM).of(option, units);
        return targetM.isPresent() ? OptionalDouble.of(units.distance().fromM(targetM.getAsDouble())) : targetM;
    }

    private static OptionalDouble swingweightTarget(Option option, Units units) {
        return option.setup()
                .flatMap(setup -> setup.club().targets().swingweight())
                .map(Swingweight::scalePoints)
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }
}
