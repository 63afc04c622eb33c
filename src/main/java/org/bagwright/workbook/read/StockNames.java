package org.bagwright.workbook.read;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What an item of the stock may be called.
 *
 * @param kits the kits
 * @param sleeves the sleeves
 * @param clubs the clubs, without a readable sheet Clubs none
 */
record StockNames(Drafts<KitDraft> kits, Drafts<SleeveDraft> sleeves, Optional<ClubSheet> clubs) {

    Optional<String> sleeve(String text) {
        return sleeves.names().find(text);
    }

    /** The club's name as it was first written, of whichever golfer. */
    Optional<String> head(String text) {
        return clubs.flatMap(reader -> reader.allNames().find(text));
    }

    List<String> sleevesAndHeads() {
        Stream<String> heads = clubs.stream().flatMap(reader -> reader.allNames().names().stream());
        return Stream.concat(sleeves.names().names().stream(), heads).toList();
    }

    /** Whether every name could be read, so that an item not found is really not there. */
    boolean allRead() {
        boolean kitsRead = kits.isMissing()
                ? clubs.filter(ClubSheet::anyKitNamed).isEmpty()
                : kits.names().isComplete();
        boolean sleevesRead = sleeves.isMissing()
                ? clubs.filter(ClubSheet::anySleeveNamed).isEmpty()
                : sleeves.names().isComplete();
        return kitsRead && sleevesRead && clubs.filter(ClubSheet::allNamesRead).isPresent();
    }

    /** Whether every mass of a kit, or of all kits, could be read, so that one not found is really not there. */
    boolean allMassesRead(Optional<KitDraft> kit) {
        return kit.map(KitDraft::allMassesRead)
                .orElseGet(() -> allRead() && kits.all().stream().allMatch(KitDraft::allMassesRead));
    }
}
