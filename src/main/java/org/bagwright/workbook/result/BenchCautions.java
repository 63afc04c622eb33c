package org.bagwright.workbook.result;

import java.util.List;

/** What to mind at the bench and afterwards, as common practice and the rules of the game have it. */
final class BenchCautions {
    static final List<String> LINES = List.of(
            "Wear eye protection whenever you bend or drill.",
            "Bend a hosel only if its maker allows it; a degree weaker adds a degree of bounce (common practice).",
            "Tighten a sleeve bolt with a torque tool set to the maker's stated value, and stop at the click.",
            "Epoxy: wear gloves, work in fresh air, and let it cure fully before a ball is hit.",
            "After the first shots check that nothing has worked loose, and gauge again.",
            "A club whose loft or lie was changed on purpose during a round may not be used in the rest of it"
                    + " (Rules of Golf, 4.1a(3)).",
            "The makers' instructions, local rules and licensed practice come first.");

    private BenchCautions() {}
}
