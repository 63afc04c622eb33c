package org.bagwright.workbook.result;

import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.club.Choice;
import org.bagwright.domain.option.Option;
import org.bagwright.domain.option.SlotOptions;
import org.bagwright.domain.plan.OptionChange;

/** What is chosen for a slot. */
record SlotChoice(SlotOptions slot, Option option) {

    /** Few words such as {@code setting 4, loft +1}; with the club's name where more than one club may fill the slot. */
    String inWords() {
        if (option.isEmpty()) {
            return option.clubText();
        }
        List<String> words = new ArrayList<>();
        if (slot.clubs().size() > 1) {
            words.add(option.clubText());
        }
        Choice choice = option.choice();
        choice.setting().ifPresent(setting -> words.add("setting " + setting));
        choice.weighting().ifPresent(weighting -> words.add("weighting " + weighting));
        addBend(words, "loft ", choice.bend().loftDeg());
        addBend(words, "lie ", choice.bend().lieDeg());
        if (words.isEmpty()) {
            words.add(option.club().freedom().bendRange().limitDeg() > 0 ? "no bend" : "as it is");
        }
        return String.join(", ", words);
    }

    private static void addBend(List<String> words, String what, double bendDeg) {
        String text = OptionChange.bendText(bendDeg);
        if (!text.equals("0")) {
            words.add(what + text);
        }
    }
}
