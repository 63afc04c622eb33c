package org.bagwright.domain.option;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.club.Club;
import org.bagwright.domain.text.Numbers;
import org.bagwright.domain.units.Checks;

/**
 * One way to fill one slot of a bag: a club set up in one way, or nothing.
 *
 * @param key text that names it uniquely in the book
 * @param setup the club with all its numbers; empty where the slot is left empty
 * @param changes how many items differ from today
 * @param terms what it costs by itself
 * @param closedReasons why a plan may not take it; empty if it may
 * @param takes how many pieces it takes of each item in limited number, in the order of the book's stock
 */
public record Option(
        String key,
        Optional<ClubSetup> setup,
        int changes,
        Terms terms,
        Set<ClosedReason> closedReasons,
        List<Integer> takes) {

    /** The name of a slot that is left empty, in place of a club's. */
    public static final String LEFT_OUT = "left out";

    public Option {
        Checks.named(key, "option");
        Checks.that(changes >= 0, "changes must be 0 or more");
        closedReasons = Set.copyOf(closedReasons);
        takes = List.copyOf(takes);
    }

    /** Whether a plan may take it. */
    public boolean open() {
        return closedReasons.isEmpty();
    }

    /** The same option with nothing in its way. */
    Option opened() {
        return new Option(key, setup, changes, terms, Set.of(), takes);
    }

    /** The same option with the musts and limits that a test keeps; what is broken of the others counts no more. */
    Option keeping(Predicate<HardRule> kept) {
        Optional<Club> club = setup.map(ClubSetup::club);
        Terms fewer = terms.keepingMusts(measure -> kept.test(new HardRule.Must(measure, club)));
        if (setup.isEmpty() || setup.get().wishes().limits().byKind().isEmpty()) {
            return new Option(key, setup, changes, fewer, closedReasons, takes);
        }
        ClubSetup made = setup.get();
        ClubWishes wishes = made.wishes().keeping(limit -> kept.test(new HardRule.Kept(limit, made.club())));
        return new Option(
                key,
                Optional.of(made.withWishes(wishes)),
                changes,
                fewer.keepingLimits(wishes.limits().byKind()::containsKey),
                closedReasons,
                takes);
    }

    /** The same option with its points divided by a number above 0. */
    Option cheaperBy(double divisor) {
        return new Option(key, setup, changes, terms.cheaperBy(divisor), closedReasons, takes);
    }

    /**
     * The text that names an option: golfer, slot, club, setting, weighting, loft bend and lie bend between bars.
     */
    public static String keyOf(Club club, Choice choice) {
        return String.join(
                "|",
                club.golfer(),
                String.valueOf(club.slot()),
                club.name(),
                choice.settingText(),
                choice.weightingText(),
                Numbers.trimmed(choice.bend().loftDeg()),
                Numbers.trimmed(choice.bend().lieDeg()));
    }

    /** The text that names a slot left empty. */
    public static String keyOfNone(String golfer, int slot) {
        return String.join("|", golfer, String.valueOf(slot), LEFT_OUT);
    }

    /** Whether the slot is left empty. */
    public boolean isEmpty() {
        return setup.isEmpty();
    }

    /** The name of the club, or {@link #LEFT_OUT}. */
    public String clubText() {
        return setup.map(made -> made.club().name()).orElse(LEFT_OUT);
    }

    /**
     * The club.
     *
     * @throws IllegalStateException if the slot is left empty, as for everything else that only a club has
     */
    public Club club() {
        return carried().club();
    }

    public Choice choice() {
        return carried().choice();
    }

    public PoseNumbers pose() {
        return carried().pose();
    }

    public BuildNumbers build() {
        return carried().build();
    }

    /** The shot; empty for a putter and where the slot is left empty. */
    public Optional<ShotPrediction> shot() {
        return setup.flatMap(ClubSetup::shot);
    }

    /** How far its carry may be off; nothing for a putter and where the slot is left empty. */
    public CarryDoubt doubt() {
        return setup.flatMap(ClubSetup::expected).map(ExpectedShot::doubt).orElse(CarryDoubt.NONE);
    }

    /** The carry in metres; empty for a putter and where the slot is left empty. */
    public OptionalDouble carryM() {
        return shot().map(value -> OptionalDouble.of(value.carryM())).orElseGet(OptionalDouble::empty);
    }

    /** The gaps to the next club that flies inside their limits, metres. */
    public WantedRange gapLimitsM() {
        return setup.map(made -> made.wishes().gapLimitsM()).orElse(WantedRange.ANY);
    }

    private ClubSetup carried() {
        return setup.orElseThrow(() -> new IllegalStateException("the slot of option " + key + " is left empty"));
    }
}
