package org.bagwright.domain.option;

/**
 * The part of the penalty that one option brings by itself, in points by measure.
 *
 * @param loftPoints loft against its target
 * @param liePoints lie against its target
 * @param sitsPoints the look at address against the golfer's range
 * @param carryPoints carry against its target
 * @param swingweightPoints swingweight against its target
 * @param changePoints items changed from today
 * @param hardBreaks broken musts, thousandths of a tolerance
 */
public record OwnTerms(
        double loftPoints,
        double liePoints,
        double sitsPoints,
        double carryPoints,
        double swingweightPoints,
        double changePoints,
        long hardBreaks) {
    public static final OwnTerms NONE = new OwnTerms(0, 0, 0, 0, 0, 0, 0);

    /** Terms without a swingweight. */
    public OwnTerms(
            double loftPoints,
            double liePoints,
            double sitsPoints,
            double carryPoints,
            double changePoints,
            long hardBreaks) {
        this(loftPoints, liePoints, sitsPoints, carryPoints, 0, changePoints, hardBreaks);
    }

    public double totalPoints() {
        return loftPoints + liePoints + sitsPoints + carryPoints + swingweightPoints + changePoints;
    }

    /** The same terms with other broken musts. */
    public OwnTerms withHardBreaks(long otherBreaks) {
        return new OwnTerms(
                loftPoints, liePoints, sitsPoints, carryPoints, swingweightPoints, changePoints, otherBreaks);
    }
}
