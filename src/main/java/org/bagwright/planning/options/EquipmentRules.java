package org.bagwright.planning.options;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bagwright.balance.HeadInertiaCheck;
import org.bagwright.balance.LengthCheck;
import org.bagwright.domain.option.ClubSetup;
import org.bagwright.domain.text.Numbers;

/**
 * The figures of the published equipment rules that a setting or a weighting can move: club length, inertia of the head of a
 * wood, shaft at least 10 degrees from vertical. A plan keeps to them by itself; a club that breaks one today keeps it only
 * where nothing else is possible. They are checks to make, never an approval.
 */
public final class EquipmentRules {
    private static final double LEAST_SHAFT_FROM_VERTICAL_DEG = 10;
    private static final double NOISE_DEG = 1e-9;
    private static final double M_PER_IN = 0.0254;

    private final double lengthLimitM;

    public EquipmentRules(double lengthLimitM) {
        this.lengthLimitM = lengthLimitM;
    }

    /** Whether a plan may use this set-up; what is within a tolerance of measurement may be used, with a message. */
    boolean allow(ClubSetup setup) {
        return !length(setup).tooShort()
                && !length(setup).tooLong()
                && inertia(setup).map(check -> !check.overTolerance()).orElse(true)
                && !isUpright(setup);
    }

    /** What there is to check on this set-up, each with its figure and its limit. */
    public List<String> checks(ClubSetup setup) {
        List<String> checks = new ArrayList<>();
        lengthText(setup).ifPresent(checks::add);
        inertia(setup)
                .filter(HeadInertiaCheck::overLimit)
                .ifPresent(check -> checks.add("head inertia " + gramsCm2(check.figureKgM2()) + " g cm2; the limit is "
                        + gramsCm2(check.limitKgM2()) + " with " + gramsCm2(check.toleranceKgM2())
                        + " for the measurement"));
        if (isUpright(setup)) {
            checks.add("lie " + Numbers.fixed(setup.pose().gaugeLieDeg(), 1)
                    + " degrees; the shaft must lean at least 10 degrees from vertical");
        }
        return checks;
    }

    private Optional<String> lengthText(ClubSetup setup) {
        LengthCheck check = length(setup);
        return check.tooShort() || check.tooLong()
                ? Optional.of("length " + inches(check.figureM()) + " in; the limits are " + inches(check.shortestM())
                        + " in and " + inches(lengthLimitM) + " in (putters: no longest)")
                : Optional.empty();
    }

    private LengthCheck length(ClubSetup setup) {
        return LengthCheck.of(setup.club().kind(), setup.build(), lengthLimitM);
    }

    private static Optional<HeadInertiaCheck> inertia(ClubSetup setup) {
        return HeadInertiaCheck.of(setup.club().kind(), setup.build());
    }

    private static boolean isUpright(ClubSetup setup) {
        return 90 - setup.pose().gaugeLieDeg() < LEAST_SHAFT_FROM_VERTICAL_DEG - NOISE_DEG;
    }

    private static String inches(double valueM) {
        return Numbers.trimmed(valueM / M_PER_IN, 2);
    }

    private static String gramsCm2(double valueKgM2) {
        return Numbers.fixed(valueKgM2 * 1e7, 0);
    }
}
