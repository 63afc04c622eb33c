package org.bagwright.workbook;

import java.util.List;
import java.util.Optional;

/** Reads what a row of Clubs says of its kit of weights and of the weighting that is in the head today. */
final class ClubKits {
    /**
     * What a club has, each in the kit's own spelling.
     *
     * @param kit the kit's name
     * @param weighting today's weighting
     */
    record Fitted(Optional<String> kit, Optional<String> weighting) {
        static final Fitted NOTHING = new Fitted(Optional.empty(), Optional.empty());
    }

    private record Pair(KnownKit kit, String weighting) {}

    private final WeightReader kits;
    private boolean anyNamed;

    ClubKits(WeightReader kits) {
        this.kits = kits;
    }

    boolean anyNamed() {
        return anyNamed;
    }

    Fitted fitted(InputRow row) {
        anyNamed |= row.isGiven(ClubColumns.KIT) || row.isGiven(ClubColumns.WEIGHTING);
        Optional<String> kit = row.text(ClubColumns.KIT);
        Optional<String> weighting = row.text(ClubColumns.WEIGHTING);
        if (row.isGiven(ClubColumns.KIT)) {
            return kit.map(name -> ofKit(row, name, weighting)).orElse(Fitted.NOTHING);
        }
        return weighting.map(text -> ofPair(row, text)).orElse(Fitted.NOTHING);
    }

    private Fitted ofKit(InputRow row, String name, Optional<String> weighting) {
        Optional<KnownKit> kit = kits.find(name);
        if (kit.isEmpty()) {
            unknownKit(row, ClubColumns.KIT, "kit must be a name on the sheet Weights, found \"" + name + "\".", name);
            return Fitted.NOTHING;
        }
        if (!row.isGiven(ClubColumns.WEIGHTING)) {
            return withoutWeighting(row, kit.get());
        }
        return weighting.map(text -> inKit(row, kit.get(), text)).orElse(Fitted.NOTHING);
    }

    private static Fitted withoutWeighting(InputRow row, KnownKit kit) {
        List<String> weightings = kit.weightings();
        if (weightings.size() == 1 && kit.allWeightingsRead()) {
            return new Fitted(Optional.of(kit.name()), Optional.of(weightings.get(0)));
        }
        row.problem(
                ClubColumns.WEIGHTING,
                "weighting must say which one of the kit \"" + kit.name() + "\" is in the head today, found nothing; "
                        + expected(kit));
        return Fitted.NOTHING;
    }

    /** A weighting alone, or with its kit again in front of it, where the column Kit names the kit. */
    private Fitted inKit(InputRow row, KnownKit kit, String text) {
        Optional<Pair> pair = kit.weighting(text).isPresent() ? Optional.empty() : pair(text);
        if (pair.isPresent() && pair.get().kit() != kit) {
            row.problem(
                    ClubColumns.WEIGHTING,
                    "weighting must be of the kit in the column Kit, found \"" + text + "\" and the kit \"" + kit.name()
                            + "\"; " + expected(kit));
            return Fitted.NOTHING;
        }
        return fitted(row, kit, pair.map(Pair::weighting).orElse(text));
    }

    private static Fitted fitted(InputRow row, KnownKit kit, String text) {
        Optional<String> weighting = kit.weighting(text);
        if (weighting.isPresent()) {
            return new Fitted(Optional.of(kit.name()), weighting);
        }
        row.spoil();
        if (kit.allWeightingsRead()) {
            row.problem(
                    ClubColumns.WEIGHTING,
                    "weighting must be one of the kit \"" + kit.name() + "\", found \"" + text + "\"; " + expected(kit)
                            + CloseNames.maybe(text, kit.weightings()));
        }
        return Fitted.NOTHING;
    }

    private static String expected(KnownKit kit) {
        return "expected " + Words.quotedOneOf(kit.weightings()) + ".";
    }

    private Fitted ofPair(InputRow row, String text) {
        Optional<Pair> pair = pair(text);
        if (pair.isPresent()) {
            return fitted(row, pair.get().kit(), pair.get().weighting());
        }
        int colon = text.indexOf(':');
        if (colon >= 0) {
            String kit = text.substring(0, colon).strip();
            unknownKit(
                    row,
                    ClubColumns.WEIGHTING,
                    "the kit before the colon must be a name on the sheet Weights, found \"" + text + "\".",
                    kit);
        } else {
            unknownKit(
                    row,
                    ClubColumns.WEIGHTING,
                    "weighting needs its kit, found \"" + text + "\" and no kit; expected the kit in the column Kit, or"
                            + " before the weighting as Kit: weighting." + maybePair(text),
                    "");
        }
        return Fitted.NOTHING;
    }

    private String maybePair(String text) {
        List<KnownKit> having = kits.known().stream()
                .filter(kit -> kit.weighting(text).isPresent())
                .toList();
        return having.size() == 1
                ? " Maybe \"" + having.get(0).name() + ": "
                        + having.get(0).weighting(text).orElseThrow() + "\"?"
                : "";
    }

    private void unknownKit(InputRow row, Column column, String text, String kit) {
        row.spoil();
        if (kits.namesRead()) {
            row.problem(column, text + CloseNames.maybe(kit, kits.names()));
        }
    }

    /** The text cut at the colon behind a kit's name. */
    private Optional<Pair> pair(String text) {
        for (int colon = text.indexOf(':'); colon >= 0; colon = text.indexOf(':', colon + 1)) {
            Optional<KnownKit> kit = kits.find(text.substring(0, colon));
            if (kit.isPresent()) {
                return Optional.of(new Pair(kit.get(), text.substring(colon + 1).strip()));
            }
        }
        return Optional.empty();
    }
}
