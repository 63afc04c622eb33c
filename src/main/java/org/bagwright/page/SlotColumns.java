package org.bagwright.page;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.club.LimitKind;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.CarryDoubt;
import org.bagwright.domain.option.ClosedReason;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.MatchValue;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.ShotPrediction;
import org.bagwright.domain.option.SlotOptions;

/** The columns of numbers of a slot's options. Of counts and costs a column of zeros is left out, of figures an empty one. */
final class SlotColumns {
    private final BagOptions bag;
    private final SlotOptions slot;
    private final List<ClubData> clubs;
    private final ObjectNode columns = JsonNodeFactory.instance.objectNode();

    SlotColumns(BagOptions bag, SlotOptions slot, List<ClubData> clubs) {
        this.bag = bag;
        this.slot = slot;
        this.clubs = clubs;
    }

    ObjectNode node() {
        choices();
        costs();
        doubts();
        wishes();
        figures();
        return columns;
    }

    private void add(String name, Function<Option, Object> value, boolean zeroIsNothing) {
        List<Object> values = slot.options().stream().map(value).collect(Collectors.toCollection(ArrayList::new));
        OptionColumn column = new OptionColumn(values);
        if (!column.isIdle(zeroIsNothing)) {
            columns.set(name, column.node());
        }
    }

    private void cost(String name, ToDoubleFunction<Option> value) {
        add(name, value::applyAsDouble, true);
    }

    private void figure(String name, Function<ClubSetup, OptionalDouble> value) {
        add(
                name,
                option -> option.setup()
                        .map(value)
                        .filter(OptionalDouble::isPresent)
                        .map(OptionalDouble::getAsDouble)
                        .filter(Double::isFinite)
                        .orElse(null),
                false);
    }

    private void always(String name, ToDoubleFunction<ClubSetup> value) {
        figure(name, setup -> OptionalDouble.of(value.applyAsDouble(setup)));
    }

    private void shot(String name, ToDoubleFunction<ShotPrediction> value) {
        figure(name, setup -> setup.shot().stream().mapToDouble(value).findFirst());
    }

    private void text(String name, Function<Option, String> value) {
        add(name, value::apply, false);
    }

    private void choices() {
        cost("club", option -> option.isEmpty() ? -1 : slot.clubs().indexOf(option.club()));
        cost(
                "setting",
                option -> option.isEmpty()
                        ? 0
                        : club(option).settings().indexOf(option.choice().settingText()));
        cost(
                "weighting",
                option -> option.isEmpty()
                        ? 0
                        : club(option).weightings().indexOf(option.choice().weightingText()));
        cost("loftBend", option -> option.isEmpty() ? 0 : option.choice().bend().loftDeg());
        cost("lieBend", option -> option.isEmpty() ? 0 : option.choice().bend().lieDeg());
        cost("changes", Option::changes);
        text("closed", option -> option.open() ? null : ClosedReason.labels(option.closedReasons()));
    }

    private ClubData club(Option option) {
        return clubs.get(slot.clubs().indexOf(option.club()));
    }

    private void costs() {
        for (Measure measure : Measure.values()) {
            cost("points" + measure.ordinal(), option -> option.terms().points(measure));
            cost("breaks" + measure.ordinal(), option -> option.terms().breaks(measure));
        }
        for (LimitKind kind : LimitKind.values()) {
            cost("limits" + kind.ordinal(), option -> option.terms().limitBreaks(kind));
        }
        cost("doubtPoints", option -> option.terms().doubtPoints());
        int items = slot.options().get(0).takes().size();
        for (int place = 0; place < items; place++) {
            int item = place;
            cost("takes" + item, option -> option.takes().get(item));
        }
    }

    private void doubts() {
        for (int place = 0; place < CarryDoubt.SHARED; place++) {
            int factor = place;
            cost("factorM" + factor, option -> option.doubt().sharedM(factor));
        }
        cost("ownVarianceM2", option -> option.doubt().ownVarianceM2());
    }

    private void wishes() {
        add("wishM", option -> option.carryM().isPresent() ? (Object) bag.wishAfterM(option) : null, false);
        figure("gapLeastM", setup -> setup.wishes().limits().valueMeasureUnits(LimitKind.GAP_LEAST));
        figure("gapMostM", setup -> setup.wishes().limits().valueMeasureUnits(LimitKind.GAP_MOST));
        figure("match", setup -> setup.match().stream()
                .mapToDouble(MatchValue::valueMeasureUnits)
                .findFirst());
        text("group", option -> option.setup()
                .flatMap(ClubSetup::match)
                .map(MatchValue::group)
                .orElse(null));
    }

    private void figures() {
        shot("carryM", ShotPrediction::carryM);
        shot("landingDeg", ShotPrediction::landingDeg);
        shot("launchDeg", ShotPrediction::launchDeg);
        shot("spinRpm", ShotPrediction::spinRpm);
        always("loftDeg", setup -> setup.pose().gaugeLoftDeg());
        always("lieDeg", setup -> setup.pose().gaugeLieDeg());
        always("sitsDeg", setup -> setup.pose().sitsClosedDeg());
        always("swingweight", setup -> setup.build().swingweight().scalePoints());
        text("origin", option -> option.setup()
                .flatMap(ClubSetup::expected)
                .map(expected -> expected.origin().words())
                .orElse(null));
    }
}
