package org.bagwright.planning;

/** The program does not agree with itself about a plan: nothing is written rather than a wrong bench card. */
public final class PlanDisagreement extends IllegalStateException {
    private static final long serialVersionUID = 1;

    PlanDisagreement(String what) {
        super(what + ". Nothing was written: do not use this plan, and report this to the makers of the program");
    }
}
