package org.bagwright.domain.club;

import java.util.List;
import org.bagwright.domain.units.Checks;

/** One way to fill the ports of a head: a piece for every port that is not left empty. */
public record Weighting(String name, List<PortPiece> pieces) {

    public Weighting {
        Checks.named(name, "weighting");
        pieces = List.copyOf(pieces);
    }
}
