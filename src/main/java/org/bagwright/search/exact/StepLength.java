package org.bagwright.search.exact;

/** The length of subgradient steps: halved after so many steps in a row that did not raise the bound. */
public final class StepLength {
    private final int patience;
    private double length = 1;
    private int idle;

    public StepLength(int patience) {
        this.patience = patience;
    }

    public void after(boolean raised) {
        idle = raised ? 0 : idle + 1;
        if (idle >= patience) {
            length /= 2;
            idle = 0;
        }
    }

    public double length() {
        return length;
    }
}
