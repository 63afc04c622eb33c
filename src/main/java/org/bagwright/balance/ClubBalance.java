package org.bagwright.balance;

import java.util.Optional;
import org.bagwright.domain.BuildNumbers;
import org.bagwright.domain.Club;
import org.bagwright.domain.ClubDefaults;
import org.bagwright.domain.Kit;
import org.bagwright.domain.Swingweight;
import org.bagwright.domain.Weighting;

/** Balance of one club. */
public final class ClubBalance {

    private final Club club;

    private ClubBalance(Club club) {
        this.club = club;
    }

    public static ClubBalance of(Club club, Optional<Kit> kit) {
        return new ClubBalance(club);
    }

    public BuildNumbers build(Optional<Weighting> weighting) {
        double lengthM = club.lengthM()
                .orElseGet(() -> ClubDefaults.lengthM(club.kind(), club.head().loftDeg()));
        double headKg = club.form().massKg().orElseGet(() -> ClubDefaults.headMassKg(club.kind(), lengthM))
                + weighting.map(Weighting::massKg).orElse(0.0);
        double restKg = 0.1;
        return new BuildNumbers(
                lengthM,
                headKg,
                headKg + restKg,
                Swingweight.ofKgM(headKg * (lengthM - 14 * 0.0254)),
                lengthM * 0.7,
                headKg * lengthM * lengthM,
                4e-4,
                BuildNumbers.CentreShift.NONE);
    }
}
