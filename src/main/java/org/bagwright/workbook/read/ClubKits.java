package org.bagwright.workbook.read;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.text.CloseNames;
import org.bagwright.domain.text.ListText;
import org.bagwright.workbook.cells.InputRow;
import org.bagwright.workbook.cells.NameIndex;
import org.bagwright.workbook.schema.ClubColumn;

/** Reads what a row of Clubs gives about its kit of weights and the weighting that is in the head today. */
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

    private record Pair(KitDraft kit, String weighting) {}

    private final Drafts<KitDraft> kits;
    private boolean anyNamed;

    ClubKits(Drafts<KitDraft> kits) {
        this.kits = kits;
    }

    boolean anyNamed() {
        return anyNamed;
    }

    Fitted fitted(InputRow row) {
        anyNamed |= row.isGiven(ClubColumn.KIT) || row.isGiven(ClubColumn.WEIGHTING);
        Optional<String> kit = row.text(ClubColumn.KIT);
        Optional<String> weighting = row.text(ClubColumn.WEIGHTING);
        if (row.isGiven(ClubColumn.KIT)) {
            return kit.map(name -> ofKit(row, name, weighting)).orElse(Fitted.NOTHING);
        }
        return weighting.map(text -> ofPair(row, text)).orElse(Fitted.NOTHING);
    }

    private Fitted ofKit(InputRow row, String name, Optional<String> weighting) {
        Optional<KitDraft> kit = kits.names()
                .find(row, ClubColumn.KIT, name, "a name on the sheet Weights")
                .flatMap(kits::find);
        if (kit.isEmpty()) {
            return Fitted.NOTHING;
        }
        if (!row.isGiven(ClubColumn.WEIGHTING)) {
            return withoutWeighting(row, kit.get());
        }
        return weighting.map(text -> inKit(row, kit.get(), text)).orElse(Fitted.NOTHING);
    }

    private static Fitted withoutWeighting(InputRow row, KitDraft kit) {
        NameIndex weightings = kit.weightings();
        if (weightings.names().size() == 1 && weightings.isComplete()) {
            return new Fitted(
                    Optional.of(kit.name()), weightings.names().stream().findFirst());
        }
        row.problem(
                ClubColumn.WEIGHTING,
                "weighting must say which one of the kit \"" + kit.name() + "\" is in the head today, found nothing; "
                        + expected(kit));
        return Fitted.NOTHING;
    }

    /** A weighting alone, or with its kit again in front of it, where the column Kit names the kit. */
    private Fitted inKit(InputRow row, KitDraft kit, String text) {
        Optional<Pair> pair = kit.weightings().find(text).isPresent() ? Optional.empty() : pair(text);
        if (pair.isPresent() && pair.get().kit() != kit) {
            row.problem(
                    ClubColumn.WEIGHTING,
                    "weighting must be of the kit in the column Kit, found \"" + text + "\" and the kit \"" + kit.name()
                            + "\"; " + expected(kit));
            return Fitted.NOTHING;
        }
        return fitted(row, kit, pair.map(Pair::weighting).orElse(text));
    }

    private static Fitted fitted(InputRow row, KitDraft kit, String text) {
        Optional<String> weighting = kit.weighting(row, ClubColumn.WEIGHTING, text);
        return weighting.isPresent() ? new Fitted(Optional.of(kit.name()), weighting) : Fitted.NOTHING;
    }

    private static String expected(KitDraft kit) {
        return "expected " + ListText.quotedOneOf(kit.weightings().names()) + ".";
    }

    private Fitted ofPair(InputRow row, String text) {
        Optional<Pair> pair = pair(text);
        if (pair.isPresent()) {
            return fitted(row, pair.get().kit(), pair.get().weighting());
        }
        row.spoil();
        if (kits.names().isComplete()) {
            row.problem(ClubColumn.WEIGHTING, noKit(text));
        }
        return Fitted.NOTHING;
    }

    private String noKit(String text) {
        int colon = text.indexOf(':');
        return colon < 0
                ? "weighting needs its kit, found \"" + text + "\" and no kit; expected the kit in the column Kit, or"
                        + " before the weighting as Kit: weighting." + maybePair(text)
                : "the kit before the colon must be a name on the sheet Weights, found \"" + text + "\"."
                        + CloseNames.maybe(
                                text.substring(0, colon).strip(), kits.names().names());
    }

    private String maybePair(String text) {
        List<KitDraft> having = kits.all().stream()
                .filter(kit -> kit.weightings().find(text).isPresent())
                .toList();
        return having.size() == 1
                ? " Maybe \"" + having.get(0).name() + ": "
                        + having.get(0).weightings().find(text).orElseThrow() + "\"?"
                : "";
    }

    /** The text cut at the colon after a kit's name. */
    private Optional<Pair> pair(String text) {
        for (int colon = text.indexOf(':'); colon >= 0; colon = text.indexOf(':', colon + 1)) {
            Optional<KitDraft> kit = kits.find(text.substring(0, colon));
            if (kit.isPresent()) {
                return Optional.of(new Pair(kit.get(), text.substring(colon + 1).strip()));
            }
        }
        return Optional.empty();
    }
}
