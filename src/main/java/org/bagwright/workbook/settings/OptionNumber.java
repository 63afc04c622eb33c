package org.bagwright.workbook.settings;

import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.club.Targets;
import org.bagwright.domain.option.BuildNumbers;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.PoseNumbers;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.units.Units;

/** One number of an option in the units of the book; empty where the option has no such number. */
@FunctionalInterface
public interface OptionNumber {

    /** For what is no number, or is shown in another way. */
    OptionNumber NONE = (option, units) -> OptionalDouble.empty();

    /** What is nearer to 0 is a rounding of the arithmetic, in any unit. */
    double ROUNDING = 1e-9;

    OptionalDouble of(Option option, Units units);

    /** The same number, but 0 where only rounding keeps it from that: it is shown as a word then. */
    default OptionNumber orZero() {
        return (option, units) -> {
            OptionalDouble number = of(option, units);
            return number.isPresent() && Math.abs(number.getAsDouble()) < ROUNDING ? OptionalDouble.of(0) : number;
        };
    }

    static OptionNumber setup(ToDoubleFunction<ClubSetup> number) {
        return (option, units) -> option.setup()
                .map(setup -> OptionalDouble.of(number.applyAsDouble(setup)))
                .orElseGet(OptionalDouble::empty);
    }

    static OptionNumber pose(ToDoubleFunction<PoseNumbers> number) {
        return setup(setup -> number.applyAsDouble(setup.pose()));
    }

    static OptionNumber build(ToDoubleFunction<BuildNumbers> number) {
        return setup(setup -> number.applyAsDouble(setup.build()));
    }

    static OptionNumber build(ToDoubleBiFunction<BuildNumbers, Units> number) {
        return (option, units) ->
                setup(setup -> number.applyAsDouble(setup.build(), units)).of(option, units);
    }

    static OptionNumber shot(ToDoubleFunction<ShotPrediction> number) {
        return shot((shot, units) -> number.applyAsDouble(shot));
    }

    static OptionNumber shot(ToDoubleBiFunction<ShotPrediction, Units> number) {
        return (option, units) -> option.shot()
                .map(shot -> OptionalDouble.of(number.applyAsDouble(shot, units)))
                .orElseGet(OptionalDouble::empty);
    }

    /** A number of how far the carry may be off, given what a metre is in the unit of distances. */
    static OptionNumber doubt(ToDoubleBiFunction<CarryDoubt, Double> number) {
        return (option, units) -> option.carryM().isPresent()
                ? OptionalDouble.of(
                        number.applyAsDouble(option.doubt(), units.distance().fromM(1)))
                : OptionalDouble.empty();
    }

    static OptionNumber target(Function<Targets, OptionalDouble> number) {
        return (option, units) -> option.setup()
                .map(setup -> number.apply(setup.club().targets()))
                .orElseGet(OptionalDouble::empty);
    }

    /** The bound of a limit of the club or its golfer; of gaps only where the club carries. */
    static OptionNumber limit(LimitKind kind) {
        boolean distance = kind.quantity() == LimitKind.Quantity.GAP || kind.quantity() == LimitKind.Quantity.CARRY;
        return (option, units) -> {
            OptionalDouble value = option.carryM().isEmpty()
                    ? OptionalDouble.empty()
                    : option.setup().orElseThrow().wishes().limits().valueMeasureUnits(kind);
            return value.isPresent() && distance
                    ? OptionalDouble.of(units.distance().fromM(value.getAsDouble()))
                    : value;
        };
    }

    /** A number that an empty slot has too. */
    static OptionNumber always(ToDoubleFunction<Option> number) {
        return (option, units) -> OptionalDouble.of(number.applyAsDouble(option));
    }
}
