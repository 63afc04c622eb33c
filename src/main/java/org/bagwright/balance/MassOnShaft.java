package org.bagwright.balance;

/**
 * A part of a club as its butt end sees it.
 *
 * @param massKg mass, kilograms
 * @param fromButtM distance of its centre from the butt end along the shaft, metres
 * @param forwardM distance of its centre from the shaft toward the target, metres
 * @param ownKgM2 inertia about its own centre, across the shaft, kg m2
 */
record MassOnShaft(double massKg, double fromButtM, double forwardM, double ownKgM2) {

    /** A uniform rod along the shaft. */
    static MassOnShaft rod(double massKg, double centreM, double lengthM) {
        return new MassOnShaft(massKg, centreM, 0, massKg * lengthM * lengthM / 12);
    }

    /** Mass times arm about a point of the shaft, kg m. */
    double momentKgM(double aboutM) {
        return massKg * (fromButtM - aboutM);
    }

    /** Inertia about the axis through the butt end at right angles to the shaft and to the target line, kg m2. */
    double aboutButtKgM2() {
        return ownKgM2 + massKg * (fromButtM * fromButtM + forwardM * forwardM);
    }
}
