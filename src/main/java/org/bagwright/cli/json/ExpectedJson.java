package org.bagwright.cli.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.bagwright.domain.option.ExpectedShot;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.units.Units;

/**
 * How well the carry of an option is known, and where it comes from.
 *
 * @param units the units of the book
 */
record ExpectedJson(Units units) {

    /** Puts it into the node of an option; nothing where no club flies. */
    void put(ObjectNode node, SlotOptions slot, Option option) {
        option.setup().flatMap(setup -> setup.expected()).ifPresent(expected -> put(node, expected));
        slot.changeSdM(option)
                .ifPresent(sdM -> node.put("changeSd", units.distance().fromM(sdM)));
    }

    private void put(ObjectNode node, ExpectedShot expected) {
        node.put("carrySd", units.distance().fromM(Math.sqrt(expected.doubt().varianceM2())));
        node.put("carryFrom", expected.origin().words());
        node.put("extended", expected.extended());
    }
}
