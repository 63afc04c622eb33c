package org.bagwright.workbook.plan;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.bagwright.domain.book.Measure;
import org.bagwright.workbook.settings.SettingsColumn;
import org.bagwright.workbook.settings.SheetColumn;

/** The columns of the sheet Plan in order, but for those with the terms of the penalty. */
public enum PlanColumn implements SheetColumn {
    GOLFER("", "Golfer", 7.2),
    SLOT("", "Slot", 4.2),

    LIVE_CLUB(PlanState.LIVE, PlanQuantity.CLUB, Group.CHOICE, "Live club", 13),
    LIVE_SETTING(PlanState.LIVE, PlanQuantity.SETTING, Group.CHOICE, "Live setting", 7),
    LIVE_WEIGHTING(PlanState.LIVE, PlanQuantity.WEIGHTING, Group.CHOICE, "Live weighting", 9.3),
    LIVE_LOFT_BEND(PlanState.LIVE, PlanQuantity.LOFT_BEND, Group.CHOICE, "Live loft bend [deg]", 5.6),
    LIVE_LIE_BEND(PlanState.LIVE, PlanQuantity.LIE_BEND, Group.CHOICE, "Live lie bend [deg]", 5.6),
    PIN(Group.CHOICE, "Pin", 4),

    LIVE_LOFT(PlanState.LIVE, PlanQuantity.LOFT, Group.GIVES, "Live loft [deg]", 5.6),
    LIVE_LIE(SettingsColumn.LIE, Group.GIVES, "Live lie [deg]", 5.6),
    LIVE_SITS(SettingsColumn.SITS, Group.GIVES, "Live sits [deg]", 9.1),
    LIVE_CARRY(PlanState.LIVE, PlanQuantity.CARRY, Group.GIVES, "Live carry [DIST]", 5.8),
    LIVE_GAP(PlanState.LIVE, PlanQuantity.GAP, Group.GIVES, "Live gap [DIST]", 5.3),
    GAP_WISH(SettingsColumn.GAP_WISH, Group.GIVES, "Gap wish [DIST]", 5.3),
    LIVE_PENALTY(PlanState.LIVE, PlanQuantity.PENALTY, Group.GIVES, "Live penalty", 7.3),
    LIVE_FIT(Group.GIVES, "Live fit", 15.35),

    TODAY_SETUP("Today", "Today set-up", 7),
    TODAY_CARRY(PlanState.TODAY, PlanQuantity.CARRY, "Today", "Today carry [DIST]", 6.2),
    TODAY_GAP(PlanState.TODAY, PlanQuantity.GAP, "Today", "Today gap [DIST]", 6.2),

    PLANNED_SETUP("Plan", "Plan set-up", 7),
    PLANNED_CARRY(PlanState.PLANNED, PlanQuantity.CARRY, "Plan", "Plan carry [DIST]", 5.8),
    PLANNED_GAP(PlanState.PLANNED, PlanQuantity.GAP, "Plan", "Plan gap [DIST]", 5.3),

    CHART("", "Gap less wish [DIST] \u25CB today \u25C6 plan \u25A0 live", 10.15),

    LOFT_TARGET(SettingsColumn.LOFT_TARGET, "Wanted", "Loft target [deg]", 8),
    LIE_TARGET(SettingsColumn.LIE_TARGET, "Wanted", "Lie target [deg]", 8),
    CARRY_TARGET(SettingsColumn.CARRY_TARGET, "Wanted", "Carry target [DIST]", 8),
    SWINGWEIGHT_TARGET(SettingsColumn.TARGET_TEXT, "Wanted", "Swing- weight target", 8),
    MOST_OPEN("Wanted", "Most open [deg closed]", 8),
    MOST_CLOSED("Wanted", "Most closed [deg closed]", 8),

    GAP_LEAST(SettingsColumn.GAP_LEAST, "Wanted", "Gap least [DIST]", 8),
    GAP_MOST(SettingsColumn.GAP_MOST, "Wanted", "Gap most [DIST]", 8),
    CARRY_LEAST(SettingsColumn.CARRY_LEAST, "Wanted", "Carry least [DIST]", 8),
    CARRY_MOST(SettingsColumn.CARRY_MOST, "Wanted", "Carry most [DIST]", 8),
    LANDING_LEAST(SettingsColumn.LANDING_LEAST, "Wanted", "Landing least [deg]", 8),

    SHOT(Group.SHOT, "The shot \u25B8", 7),
    LIVE_START_LINE(SettingsColumn.START, Group.SHOT, "Live start line [deg closed]", 8),
    LIVE_CONTACT(SettingsColumn.CONTACT, Group.SHOT, "Live contact shift [mm forward]", 9),
    LIVE_SHAFT_TURN(SettingsColumn.SHAFT_TURN, Group.SHOT, "Live shaft turn [deg]", 8),
    LIVE_LAUNCH(SettingsColumn.LAUNCH, Group.SHOT, "Live launch [deg]", 8),
    LIVE_SPIN(SettingsColumn.SPIN, Group.SHOT, "Live spin [rpm]", 8),
    LIVE_LANDING(SettingsColumn.LANDING, Group.SHOT, "Live landing [deg]", 8.5),
    LIVE_CARRY_SPREAD(PlanState.LIVE, PlanQuantity.CARRY_SPREAD, Group.SHOT, "Live carry +- [DIST]", 8),
    LIVE_CHANGE_SPREAD(SettingsColumn.CHANGE_SPREAD, Group.SHOT, "Live change of carry +- [DIST]", 9),
    LIVE_GAP_SPREAD(PlanState.LIVE, PlanQuantity.GAP_SPREAD, Group.SHOT, "Live gap +- [DIST]", 8),

    BUILD(Group.BUILD, "The build \u25B8", 7),
    LIVE_LENGTH(SettingsColumn.LENGTH, Group.BUILD, "Live length [LEN]", 8),
    LENGTH_CHANGE(Group.BUILD, "Length change [LEN]", 8.5),
    HEAD_MASS_CHANGE(Group.BUILD, "Head mass change [g]", 8.5),
    LIVE_TOTAL_MASS(SettingsColumn.TOTAL_MASS, Group.BUILD, "Live total mass [g]", 8),
    TODAY_SWINGWEIGHT(SettingsColumn.SWINGWEIGHT_TEXT, Group.BUILD, "Today swing- weight", 8),
    LIVE_SWINGWEIGHT(SettingsColumn.SWINGWEIGHT_TEXT, Group.BUILD, "Live swing- weight", 8),
    HEAD_GRAMS(Group.BUILD, "To swingweight target, at head [g]", 13),
    LIVE_CHANGES(PlanState.LIVE, PlanQuantity.CHANGES, Group.BUILD, "Live changes", 8.5),

    MORE("", "Today, planned \u25B8", 9),
    TODAY_CLUB(PlanState.TODAY, PlanQuantity.CLUB, Group.TODAY, "Club", 15),
    TODAY_SETTING(PlanState.TODAY, PlanQuantity.SETTING, Group.TODAY, "Today setting", 8),
    TODAY_WEIGHTING(PlanState.TODAY, PlanQuantity.WEIGHTING, Group.TODAY, "Today weighting", 10),
    TODAY_LOFT(PlanState.TODAY, PlanQuantity.LOFT, Group.TODAY, "Today loft [deg]", 7.5),
    TODAY_CARRY_SPREAD(PlanState.TODAY, PlanQuantity.CARRY_SPREAD, Group.TODAY, "Today carry +- [DIST]", 8),
    TODAY_GAP_SPREAD(PlanState.TODAY, PlanQuantity.GAP_SPREAD, Group.TODAY, "Today gap +- [DIST]", 8),
    TODAY_PENALTY(PlanState.TODAY, PlanQuantity.PENALTY, Group.TODAY, "Today penalty", 8.5),

    PLANNED_CLUB(PlanState.PLANNED, PlanQuantity.CLUB, Group.PLANNED, "Planned club", 14),
    PLANNED_SETTING(PlanState.PLANNED, PlanQuantity.SETTING, Group.PLANNED, "Planned setting", 8.5),
    PLANNED_WEIGHTING(PlanState.PLANNED, PlanQuantity.WEIGHTING, Group.PLANNED, "Planned weighting", 10),
    PLANNED_LOFT_BEND(PlanState.PLANNED, PlanQuantity.LOFT_BEND, Group.PLANNED, "Planned loft bend [deg]", 8.5),
    PLANNED_LIE_BEND(PlanState.PLANNED, PlanQuantity.LIE_BEND, Group.PLANNED, "Planned lie bend [deg]", 8.5),
    PLANNED_LOFT(PlanState.PLANNED, PlanQuantity.LOFT, Group.PLANNED, "Planned loft [deg]", 8.5),
    PLANNED_CARRY_SPREAD(PlanState.PLANNED, PlanQuantity.CARRY_SPREAD, Group.PLANNED, "Planned carry +- [DIST]", 8.5),
    PLANNED_GAP_SPREAD(PlanState.PLANNED, PlanQuantity.GAP_SPREAD, Group.PLANNED, "Planned gap +- [DIST]", 8.5),
    PLANNED_PENALTY(PlanState.PLANNED, PlanQuantity.PENALTY, Group.PLANNED, "Planned penalty", 8.5),

    TODAY_LOFT_BEND(PlanState.TODAY, PlanQuantity.LOFT_BEND, Group.SUMS, "Today loft bend [deg]", 8),
    TODAY_LIE_BEND(PlanState.TODAY, PlanQuantity.LIE_BEND, Group.SUMS, "Today lie bend [deg]", 8),
    LIVE_LIST(Group.SUMS, "Live club in its list", 8),
    TODAY_ROW(PlanState.TODAY, PlanQuantity.ROW, Group.SUMS, "Today row", 8),
    PLANNED_ROW(PlanState.PLANNED, PlanQuantity.ROW, Group.SUMS, "Planned row", 8),
    LIVE_ROW(PlanState.LIVE, PlanQuantity.ROW, Group.SUMS, "Live row", 8),
    TODAY_NEXT(PlanState.TODAY, PlanQuantity.NEXT, Group.SUMS, "Today next carry [DIST]", 8),
    PLANNED_NEXT(PlanState.PLANNED, PlanQuantity.NEXT, Group.SUMS, "Planned next carry [DIST]", 8),
    LIVE_NEXT(PlanState.LIVE, PlanQuantity.NEXT, Group.SUMS, "Live next carry [DIST]", 8),
    TODAY_NEXT_ROW(PlanState.TODAY, PlanQuantity.NEXT_ROW, Group.SUMS, "Today next row", 8),
    PLANNED_NEXT_ROW(PlanState.PLANNED, PlanQuantity.NEXT_ROW, Group.SUMS, "Planned next row", 8),
    LIVE_NEXT_ROW(PlanState.LIVE, PlanQuantity.NEXT_ROW, Group.SUMS, "Live next row", 8),
    TODAY_GAP_VARIANCE(PlanState.TODAY, PlanQuantity.GAP_VARIANCE, Group.SUMS, "Today gap variance [DIST2]", 8),
    PLANNED_GAP_VARIANCE(PlanState.PLANNED, PlanQuantity.GAP_VARIANCE, Group.SUMS, "Planned gap variance [DIST2]", 8),
    LIVE_GAP_VARIANCE(PlanState.LIVE, PlanQuantity.GAP_VARIANCE, Group.SUMS, "Live gap variance [DIST2]", 8),
    TODAY_DOUBT(PlanState.TODAY, PlanQuantity.DOUBT, Group.SUMS, "Today doubt [points]", 8),
    PLANNED_DOUBT(PlanState.PLANNED, PlanQuantity.DOUBT, Group.SUMS, "Planned doubt [points]", 8),
    LIVE_DOUBT(PlanState.LIVE, PlanQuantity.DOUBT, Group.SUMS, "Live doubt [points]", 8),
    LIVE_NEXT_CLUB(Group.SUMS, "Live next club", 14),
    LONGEST_TODAY(Group.SUMS, "Longest today [DIST]", 8),
    TODAY_GROUP(PlanState.TODAY, PlanQuantity.GROUP, Group.SUMS, "Today match group", 10),
    TODAY_MATCH(PlanState.TODAY, PlanQuantity.MATCH, Group.SUMS, "Today match value", 8),
    PLANNED_GROUP(PlanState.PLANNED, PlanQuantity.GROUP, Group.SUMS, "Planned match group", 10),
    PLANNED_MATCH(PlanState.PLANNED, PlanQuantity.MATCH, Group.SUMS, "Planned match value", 8),
    LIVE_GROUP(PlanState.LIVE, PlanQuantity.GROUP, Group.SUMS, "Live match group", 10),
    LIVE_MATCH(PlanState.LIVE, PlanQuantity.MATCH, Group.SUMS, "Live match value", 8),
    TODAY_CHANGES(PlanState.TODAY, PlanQuantity.CHANGES, Group.SUMS, "Today changes", 8),
    PLANNED_CHANGES(PlanState.PLANNED, PlanQuantity.CHANGES, Group.SUMS, "Planned changes", 8),
    LIVE_POINTS(SettingsColumn.SWINGWEIGHT, Group.SUMS, "Live swing- weight [points from A0]", 10),
    TARGET_POINTS(SettingsColumn.SWINGWEIGHT_TARGET, Group.SUMS, "Target swing- weight [points from A0]", 10),
    GOLFER_SHOWN(Group.SUMS, "Golfer shown", 8),
    TODAY_OFF(PlanState.TODAY, PlanQuantity.OFF_WISH, Group.SUMS, "Today gap less wish, drawn [DIST]", 8),
    PLANNED_OFF(PlanState.PLANNED, PlanQuantity.OFF_WISH, Group.SUMS, "Planned gap less wish, drawn [DIST]", 8),
    LIVE_OFF(PlanState.LIVE, PlanQuantity.OFF_WISH, Group.SUMS, "Live gap less wish, drawn [DIST]", 8),
    TODAY_LINE(PlanState.TODAY, PlanQuantity.LINE, Group.SUMS, "Today line of the chart", 8),
    PLANNED_LINE(PlanState.PLANNED, PlanQuantity.LINE, Group.SUMS, "Planned line of the chart", 8),
    LIVE_LINE(PlanState.LIVE, PlanQuantity.LINE, Group.SUMS, "Live line of the chart", 8),
    LEAST_OFF(Group.SUMS, "Tolerance below the wish [DIST]", 8),
    MOST_OFF(Group.SUMS, "Tolerance above the wish [DIST]", 8),
    BAND_LINE(Group.SUMS, "Line of the tolerance", 8),
    LIVE_WORST(Group.SUMS, "Live worst miss [tolerances]", 10),

    OPEN_LIMIT(Group.RULES, "Most open, read [deg closed]", 8),
    CLOSED_LIMIT(Group.RULES, "Most closed, read [deg closed]", 8),
    BEYOND_SITS(Group.RULES, "Live sits beyond its limit [deg]", 8),
    BEYOND_GAP(Group.RULES, "Live gap beyond its limit [DIST]", 8),
    BEYOND_CARRY(Group.RULES, "Live carry beyond its limit [DIST]", 8),
    BEYOND_LANDING(Group.RULES, "Live landing beyond its limit [deg]", 8),
    LIVE_LIMITS(Group.RULES, "Live limits broken", 8),
    LIVE_MUST(Group.RULES, "Live must missed", 10),
    LIVE_MUSTS(Group.RULES, "Live musts missed", 8),
    LIVE_CLOSED(SettingsColumn.CLOSED, Group.RULES, "Live choice closed by", 12),
    LIVE_SHUT(Group.RULES, "Live choices closed", 8),
    LIVE_SHORT(Group.RULES, "Live pieces beyond the stock", 8),
    LIVE_BAG(Group.RULES, "Live limits of the bag broken", 8),
    FILLED(Group.RULES, "Filled in by the plan", 10);

    /** Where the columns with the terms begin, and after them those with the misses; see {@link TermColumn}. */
    static final int FIRST_TERM = LIVE_WORST.ordinal();

    /** How many columns have terms: each state has one for each measure. */
    private static final int TERMS = PlanState.values().length * Measure.values().length;

    /** Where the columns with the misses of the live choice begin; see {@link MissColumn}. */
    static final int FIRST_MISS = FIRST_TERM + TERMS;

    private static final int MISSES = (int) Arrays.stream(Measure.values())
            .filter(measure -> measure.scope() != Measure.Scope.ITEMS)
            .count();

    private static final Map<PlanState, Map<PlanQuantity, PlanColumn>> BY_STATE = new EnumMap<>(PlanState.class);

    static {
        for (PlanColumn column : values()) {
            column.held.ifPresent(
                    held -> BY_STATE.computeIfAbsent(held.state(), state -> new EnumMap<>(PlanQuantity.class))
                            .put(held.quantity(), column));
        }
    }

    /** What a column holds that the states have alike. */
    private record Held(PlanState state, PlanQuantity quantity) {}

    private final Optional<Held> held;
    private final Optional<SettingsColumn> source;
    private final String group;
    private final String heading;
    private final double widthChars;

    PlanColumn(String group, String heading, double widthChars) {
        this(Optional.empty(), Optional.empty(), group, heading, widthChars);
    }

    PlanColumn(SettingsColumn source, String group, String heading, double widthChars) {
        this(Optional.empty(), Optional.of(source), group, heading, widthChars);
    }

    PlanColumn(PlanState state, PlanQuantity quantity, String group, String heading, double widthChars) {
        this(Optional.of(new Held(state, quantity)), quantity.source(), group, heading, widthChars);
    }

    PlanColumn(Optional<Held> held, Optional<SettingsColumn> source, String group, String heading, double widthChars) {
        this.held = held;
        this.source = source;
        this.group = group;
        this.heading = heading;
        this.widthChars = widthChars;
    }

    /** The column of a state with something that all states have. */
    public static PlanColumn of(PlanState state, PlanQuantity quantity) {
        return BY_STATE.get(state).get(quantity);
    }

    /** The column with the same quantity of a state; this one if only one state has it. */
    PlanColumn in(PlanState state) {
        return held.map(mine -> of(state, mine.quantity())).orElse(this);
    }

    /** Whether only formulas need it, or the next plan. */
    boolean isHelper() {
        return compareTo(TODAY_LOFT_BEND) >= 0;
    }

    /** Whether it is in a group that is closed at first. */
    boolean isInGroup() {
        return compareTo(SHOT) > 0 && !isHelper() && this != BUILD && this != MORE;
    }

    /** The column of the sheet Settings from which it is looked up; empty if the sheet Plan computes it itself. */
    Optional<SettingsColumn> source() {
        return source;
    }

    @Override
    public int index() {
        return ordinal() < FIRST_TERM ? ordinal() : ordinal() + TERMS + MISSES;
    }

    @Override
    public String heading() {
        return heading;
    }

    @Override
    public double widthChars() {
        return widthChars;
    }

    @Override
    public String group() {
        return group;
    }

    /** Titles of groups that many columns share. */
    private static final class Group {
        private static final String CHOICE = "Your choice";
        private static final String GIVES = "What it gives";
        private static final String SHOT = "The shot";
        private static final String BUILD = "The build";
        private static final String TODAY = "More of today";
        private static final String PLANNED = "More of the plan";
        private static final String SUMS = "How the penalty adds up";
        private static final String RULES = "What the live choice breaks";
    }
}
