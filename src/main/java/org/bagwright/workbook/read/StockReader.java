package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.bagwright.domain.book.StockItem;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.ListText;
import org.bagwright.domain.text.Numbers;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.InputTable;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.StockColumn;

/** Reads the sheet Stock. */
final class StockReader {
    private static final List<Column> NEEDED = List.of(StockColumn.ITEM, StockColumn.COUNT);

    private record Named(StockItem.Kind kind, Optional<String> name, OptionalDouble massKg) {
        String key() {
            return kind + "\n" + name.map(CloseNames::key).orElse("") + "\n" + massKg;
        }
    }

    private final StockNames names;
    private final Map<String, String> cells = new HashMap<>();
    private final List<StockItem> items = new ArrayList<>();

    private StockReader(StockNames names) {
        this.names = names;
    }

    /** The stock of a book, whose kits, sleeves and clubs are read already. */
    static List<StockItem> read(InputTable table, StockNames names) {
        StockReader reader = new StockReader(names);
        table.read(NEEDED, reader::readRow);
        return reader.items;
    }

    private void readRow(InputRow row) {
        row.require(NEEDED.toArray(Column[]::new));
        Optional<Named> item = row.text(StockColumn.ITEM).flatMap(text -> named(row, text));
        item.ifPresent(named -> unique(row, named));
        OptionalInt count = row.whole(StockColumn.COUNT);
        if (item.isPresent() && !row.isSpoilt()) {
            Named named = item.get();
            String cell = row.cell(StockColumn.ITEM);
            items.add(new StockItem(named.kind(), named.name(), named.massKg(), count.getAsInt(), cell));
        }
    }

    private void unique(InputRow row, Named item) {
        String first = cells.putIfAbsent(item.key(), row.cell(StockColumn.ITEM));
        if (first != null) {
            row.problem(
                    StockColumn.ITEM,
                    "item must have one row only, found "
                            + row.content(StockColumn.ITEM).shown() + " again, first in " + first + ".");
        }
    }

    private Optional<Named> named(InputRow row, String text) {
        Optional<String> sleeve = names.sleeve(text);
        Optional<String> head = names.head(text);
        if (sleeve.isPresent() && head.isPresent()) {
            row.problem(
                    StockColumn.ITEM,
                    "item must name one thing, found \"" + text + "\", which is a sleeve and a club; expected different"
                            + " names for the two.");
            return Optional.empty();
        }
        if (sleeve.isPresent()) {
            return Optional.of(new Named(StockItem.Kind.SLEEVE, sleeve, OptionalDouble.empty()));
        }
        if (head.isPresent()) {
            return Optional.of(new Named(StockItem.Kind.HEAD, head, OptionalDouble.empty()));
        }
        return piece(row, text);
    }

    private Optional<Named> piece(InputRow row, String text) {
        Optional<PieceText> piece = PieceText.parse(text);
        Optional<KitDraft> kit = piece.flatMap(PieceText::kit).flatMap(names.kits()::find);
        if (piece.isEmpty() || piece.get().kit().isPresent() != kit.isPresent()) {
            unknown(row, text);
            return Optional.empty();
        }
        return piece(row, kit, piece.get());
    }

    private Optional<Named> piece(InputRow row, Optional<KitDraft> kit, PieceText piece) {
        List<KitDraft> having = kit.map(List::of).orElseGet(names.kits()::all);
        OptionalDouble massKg = having.stream()
                .map(known -> known.mass(piece.massKg()))
                .flatMapToDouble(OptionalDouble::stream)
                .findFirst();
        if (massKg.isPresent() && (kit.isPresent() || piece.hasUnit())) {
            return Optional.of(new Named(StockItem.Kind.PIECE, kit.map(KitDraft::name), massKg));
        }
        row.spoil();
        if (massKg.isPresent()) {
            row.problem(
                    StockColumn.ITEM,
                    "item must give the unit of a piece's mass, found \"" + piece.text() + "\". Maybe \""
                            + inG(massKg.getAsDouble()) + "\"?");
        } else if (names.allMassesRead(kit)) {
            unknownMass(row, kit, having, piece);
        }
        return Optional.empty();
    }

    private void unknownMass(InputRow row, Optional<KitDraft> kit, List<KitDraft> having, PieceText piece) {
        List<String> masses = having.stream()
                .flatMap(known -> known.massesKg().stream())
                .distinct()
                .sorted()
                .map(StockReader::inG)
                .toList();
        row.problem(
                StockColumn.ITEM,
                "a piece must have a mass that a weighting of "
                        + kit.map(known -> "the kit \"" + known.name() + "\"").orElse("a kit on the sheet Weights")
                        + " uses, found \"" + piece.text() + "\""
                        + (masses.isEmpty() ? "." : "; expected " + ListText.oneOf(masses) + "."));
    }

    private void unknown(InputRow row, String text) {
        row.spoil();
        if (names.allRead()) {
            List<String> pieces = names.kits().all().stream()
                    .flatMap(kit -> kit.massesKg().stream().map(massKg -> kit.name() + ": " + inG(massKg)))
                    .toList();
            String example = pieces.stream().findFirst().orElse("Kit: 12 g");
            List<String> known = Stream.concat(pieces.stream(), names.sleevesAndHeads().stream())
                    .toList();
            row.problem(
                    StockColumn.ITEM,
                    "item must be a piece of a kit such as " + example + ", a sleeve, or the name of a club, found \""
                            + text + "\"." + CloseNames.maybe(text, known));
        }
    }

    private static String inG(double massKg) {
        return Numbers.trimmed(massKg * 1000) + " g";
    }
}
