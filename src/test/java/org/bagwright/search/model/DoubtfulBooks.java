package org.bagwright.search.model;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.bagwright.domain.book.Aims;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.BookOptions;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.CarryOrigin;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.ExpectedShot;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.option.Terms;

/** Books whose carries are doubtful, and whose aims count it. */
public final class DoubtfulBooks {
    private final Random random;
    private final boolean coarse;

    private DoubtfulBooks(long seed) {
        random = new Random(seed * 0x9E3779B97F4A7C15L + 29);
        coarse = random.nextBoolean();
    }

    /** The same book with drawn doubts, shared by the bag and of the club alone, and aims by what is likely. */
    public static BookOptions with(BookOptions bare, long seed) {
        DoubtfulBooks draw = new DoubtfulBooks(seed);
        return new BookOptions(bare.bags().stream().map(draw::bag).toList(), bare.stock());
    }

    /** The same book with the same doubts, and aims by the best guess. */
    public static BookOptions byBestGuess(BookOptions doubtful) {
        return new BookOptions(
                doubtful.bags().stream()
                        .map(bag -> new BagOptions(
                                bag.golfer(),
                                bag.slots(),
                                bag.gapWishM(),
                                bag.aims().mapped(aim -> aim.onWhatIsLikely(false))))
                        .toList(),
                doubtful.stock());
    }

    /** The same option with a carry so doubtful; an empty slot and a putter stay as they are. */
    public static Option with(Option bare, CarryDoubt doubt) {
        if (bare.carryM().isEmpty()) {
            return bare;
        }
        ClubSetup made = bare.setup().orElseThrow();
        ExpectedShot shot = new ExpectedShot(made.shot().orElseThrow(), doubt, CarryOrigin.ASSUMED, false);
        ClubSetup setup = new ClubSetup(
                made.club(),
                made.wishes(),
                made.choice(),
                made.pose(),
                made.deliveredFaceDeg(),
                Optional.of(shot),
                made.build(),
                made.match());
        return new Option(
                bare.key(), Optional.of(setup), bare.changes(), bare.terms(), bare.closedReasons(), bare.takes());
    }

    /** The same options with drawn doubts, which cost what the aims of the book say. */
    public static BookOptions byAims(BookOptions bare, long seed) {
        DoubtfulBooks draw = new DoubtfulBooks(seed);
        return new BookOptions(
                bare.bags().stream()
                        .map(bag ->
                                new BagOptions(bag.golfer(), draw.slots(bag, bag.aims()), bag.gapWishM(), bag.aims()))
                        .toList(),
                bare.stock());
    }

    /** Where a carry is wanted of the club, its doubt costs too. */
    private List<SlotOptions> slots(BagOptions bare, Aims aims) {
        return bare.slots().stream()
                .map(slot -> slot.mapped(option -> costing(with(option, doubt()), aims)))
                .toList();
    }

    private static Option costing(Option option, Aims aims) {
        return option.setup()
                        .filter(setup -> setup.deviations().containsKey(Measure.CARRY))
                        .isPresent()
                ? new Option(
                        option.key(),
                        option.setup(),
                        option.changes(),
                        option.terms()
                                .plus(Terms.ofDoubt(
                                        aims.of(Measure.CARRY), option.doubt().varianceM2())),
                        option.closedReasons(),
                        option.takes())
                : option;
    }

    private BagOptions bag(BagOptions bare) {
        boolean counts = random.nextInt(6) > 0;
        return new BagOptions(
                bare.golfer(),
                bare.slots().stream()
                        .map(slot -> slot.mapped(option -> with(option, doubt())))
                        .toList(),
                bare.gapWishM(),
                bare.aims()
                        .mapped(aim -> aim.onWhatIsLikely(
                                counts && (aim.measure() == Measure.GAP || aim.measure() == Measure.CARRY))));
    }

    private CarryDoubt doubt() {
        if (random.nextInt(6) == 0) {
            return CarryDoubt.NONE;
        }
        double[] sharedM = random.doubles(1 + random.nextInt(CarryDoubt.SHARED), -2, 3)
                .map(value -> coarse ? Math.rint(value) : value)
                .toArray();
        double[] ownM = random.doubles(random.nextInt(4), -3, 3).toArray();
        return CarryDoubt.of(sharedM, coarse && random.nextBoolean() ? new double[0] : ownM);
    }
}
