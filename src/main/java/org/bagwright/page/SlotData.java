package org.bagwright.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.IntStream;
import org.bagwright.domain.book.Book;
import org.bagwright.domain.option.BagOptions;
import org.bagwright.domain.option.SlotOptions;

/**
 * What the page needs of one slot: its clubs, and a column for each number of its options.
 *
 * @param book the book
 * @param bag the bag that has the slot
 * @param slot the slot
 */
record SlotData(Book book, BagOptions bag, SlotOptions slot) {
    ObjectNode node() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("slot", slot.slot()).put("count", slot.options().size());
        node.put("cell", slot.main().cell());
        List<ClubData> clubs = IntStream.range(0, slot.clubs().size())
                .mapToObj(index -> new ClubData(book, bag, slot, index))
                .toList();
        ArrayNode described = node.putArray("clubs");
        clubs.forEach(club -> described.add(club.node()));
        node.set("columns", new SlotColumns(bag, slot, clubs).node());
        return node;
    }
}
