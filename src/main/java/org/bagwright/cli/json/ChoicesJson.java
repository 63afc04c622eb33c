package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Measure;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.Terms;
import org.bagwright.domain.plan.BagResult;
import org.bagwright.domain.plan.BagState;
import org.bagwright.domain.units.Units;

/**
 * What is chosen in a state of a bag, slot by slot.
 *
 * @param units the units of the book
 */
record ChoicesJson(Units units) {
    /** The measures that a club has; a gap has its own cost, with the gap. */
    private static final List<Measure> OF_CLUBS = Arrays.stream(Measure.values())
            .filter(measure -> measure.scope() != Measure.Scope.NEIGHBOURS)
            .toList();

    ArrayNode array(BagResult bag, BagState state) {
        ArrayNode choices = JsonNodeFactory.instance.arrayNode();
        List<Option> options = bag.optionsOf(state);
        for (int index : IntStream.range(0, options.size()).toArray()) {
            Option option = options.get(index);
            ObjectNode choice = choices.addObject();
            choice.put("slot", bag.options().slots().get(index).slot());
            choice.put("club", option.clubText());
            choice.put("option", option.key());
            choice.put("changes", option.changes());
            putSetup(choice, option.setup());
            new ExpectedJson(units).put(choice, bag.options().slots().get(index), option);
            putPenalty(choice, option, option.terms().plus(state.termsWithOthers(index)));
        }
        return choices;
    }

    /** What is set on the club and what it gives; null where the slot is left empty, and the carry of a putter. */
    private void putSetup(ObjectNode choice, Optional<ClubSetup> setup) {
        choice.put("setting", setup.map(made -> made.choice().settingText()).orElse(null));
        choice.put("weighting", setup.flatMap(made -> made.choice().weighting()).orElse(null));
        choice.put("loftBend", setup.map(made -> made.choice().bend().loftDeg()).orElse(null));
        choice.put("lieBend", setup.map(made -> made.choice().bend().lieDeg()).orElse(null));
        choice.put("gaugeLoftDeg", setup.map(made -> made.pose().gaugeLoftDeg()).orElse(null));
        choice.put("gaugeLieDeg", setup.map(made -> made.pose().gaugeLieDeg()).orElse(null));
        choice.put(
                "sitsClosedDeg", setup.map(made -> made.pose().sitsClosedDeg()).orElse(null));
        choice.put(
                "carry",
                setup.flatMap(ClubSetup::shot)
                        .map(shot -> units.distance().fromM(shot.carryM()))
                        .orElse(null));
    }

    /** What the club costs, in all and by measure, and the musts that it breaks by itself. */
    private static void putPenalty(ObjectNode choice, Option option, Terms terms) {
        choice.put("points", OF_CLUBS.stream().mapToDouble(terms::points).sum());
        ObjectNode penalty = choice.putObject("penalty");
        OF_CLUBS.forEach(measure -> penalty.put(measure.label(), terms.points(measure)));
        penalty.put("brokenMusts", option.terms().totalBreaks());
    }
}
