package org.bagwright.workbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.bagwright.domain.club.Kit;
import org.bagwright.domain.club.PortPiece;
import org.bagwright.domain.club.Weighting;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.workbook.cells.Findings;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.Column;
import org.bagwright.workbook.schema.WeightColumn;

/** A kit as far as it is known: its weightings and masses also from rows with something wrong in them. */
final class KitDraft {
    private static final double SAME_MASS_KG = 5e-6;

    private record WeightingDraft(String name, NameIndex ports, List<PortPiece> pieces) {
        private WeightingDraft(String name) {
            this(name, new NameIndex(), new ArrayList<>());
        }
    }

    private final String name;
    private final Drafts<WeightingDraft> weightings = Drafts.ofSheet();
    private final TreeSet<Double> massesKg = new TreeSet<>();
    private final List<String> assumedPlaces = new ArrayList<>();
    private boolean sound = true;
    private boolean allMassesRead = true;

    KitDraft(String name) {
        this.name = name;
    }

    String name() {
        return name;
    }

    /** The names of its weightings. */
    NameIndex weightings() {
        return weightings.names();
    }

    /** The weighting's name as it was first written, for one that a row of Clubs gives; reports one that the kit has not. */
    Optional<String> weighting(InputRow row, Column column, String found) {
        return weightings.names().pick(row, column, found, "one of the kit \"" + name + "\"");
    }

    /** As {@link #weighting}, for a cell that may write the kit again in front of it, as {@code Kit: weighting}. */
    Optional<String> weightingOrPair(InputRow row, Column column, String found) {
        int colon = found.indexOf(':');
        boolean isPair = weightings.names().find(found).isEmpty()
                && colon > 0
                && CloseNames.key(found.substring(0, colon)).equals(CloseNames.key(name));
        return weighting(row, column, isPair ? found.substring(colon + 1).strip() : found);
    }

    /** The masses above 0 of all its pieces, kg, the lightest first. */
    List<Double> massesKg() {
        return List.copyOf(massesKg);
    }

    /** The mass of a piece of this kit that is as good as the one given. */
    OptionalDouble mass(double massKg) {
        return massesKg.stream()
                .filter(known -> Math.abs(known - massKg) < SAME_MASS_KG)
                .mapToDouble(Double::doubleValue)
                .findFirst();
    }

    /** Whether no mass was unreadable, so that one not found is really not there. */
    boolean allMassesRead() {
        return allMassesRead;
    }

    /** Takes a row in and reports a port that is in its weighting already. */
    void take(InputRow row, Optional<String> weighting, Optional<String> port, OptionalDouble massKg) {
        allMassesRead &= massKg.isPresent();
        if (massKg.orElse(0) > 0) {
            massesKg.add(massKg.getAsDouble());
        }
        if (weighting.isEmpty()) {
            weightings.names().missesOne();
            return;
        }
        WeightingDraft known = weightings.named(weighting.get(), row.cell(WeightColumn.WEIGHTING), WeightingDraft::new);
        port.flatMap(text -> known.ports().add(text, row.cell(WeightColumn.PORT)))
                .ifPresent(first -> row.problem(
                        WeightColumn.PORT,
                        "port must appear only once in a weighting, found \"" + port.get() + "\" of \"" + name + ": "
                                + known.name() + "\" again, first in " + first + "."));
    }

    void add(String weighting, PortPiece piece) {
        weightings.find(weighting).orElseThrow().pieces().add(piece);
    }

    void placeAssumed(String cell) {
        assumedPlaces.add(cell);
    }

    void spoil() {
        sound = false;
    }

    void sayAssumedPlaces(Findings findings) {
        if (!assumedPlaces.isEmpty()) {
            int count = assumedPlaces.size();
            findings.assumed(
                    assumedPlaces.get(0),
                    "kit \"" + name + "\": where " + (count == 1 ? "a piece sits is" : count + " pieces sit is")
                            + " not fully given; each blank X, Y or Z counts as 0 mm, level with the centre of"
                            + " gravity of the head.");
        }
    }

    /** The kit itself; empty when something is wrong in its rows. */
    Optional<Kit> kit() {
        return sound
                ? Optional.of(new Kit(
                        name,
                        weightings.all().stream()
                                .map(weighting -> new Weighting(weighting.name(), weighting.pieces()))
                                .toList()))
                : Optional.empty();
    }
}
