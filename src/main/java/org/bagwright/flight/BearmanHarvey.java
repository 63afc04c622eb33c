package org.bagwright.flight;

/**
 * Bearman and Harvey 1976, Aeronautical Quarterly 27, 112-122: hexagonal dimples, figures 7 and 8 as digitised, at four
 * spins and ten speeds. The speeds are read as those of a standard ball in air at 20 C and 1.2041 kg/m3, so that another
 * air or ball is met at the same spin ratio and Reynolds number. Between the points: monotone cubics in speed, then in
 * spin.
 *
 * <p>Beyond the table, always without a jump in value or slope: under 2000 rpm the lift falls to 0 as a power of the spin
 * and the drag levels out. Over 6000 rpm the spin ratio is kept and the Reynolds number lowered into the table, which
 * covers wedge shots. Beyond the speeds the curves level out within 4 m/s.
 */
final class BearmanHarvey implements BallModel {
    private static final double LEAST_RPM = 2000;
    private static final double MOST_RPM = 6000;
    private static final double RPM_REACH = 500;
    private static final double SPEED_REACH_MPS = 4;
    private static final double TABLE_VISCOSITY_M2_PER_S = Air.sutherlandViscosityPaS(20) / 1.2041;
    private static final double MPS_PER_REYNOLDS = TABLE_VISCOSITY_M2_PER_S / (2 * Ball.STANDARD.radiusM());

    private static final double[] RPM = {2000, 3000, 4000, 6000};
    private static final double[] SPEED_MPS = {13.7, 21.6, 29.9, 38.4, 46.9, 55.2, 63.1, 71.9, 80.2, 88.1};
    private static final double[][] DRAG = {
        {.3624, .2885, .2765, .2529, .2472, .2481, .2467, .2470, .2470, .2470},
        {.4203, .3658, .3169, .2822, .2655, .2578, .2560, .2550, .2538, .2538},
        {.4288, .4003, .3490, .3084, .2852, .2710, .2659, .2630, .2605, .2605},
        {.5180, .4406, .3882, .3517, .3285, .3076, .2877, .2790, .2740, .2740}
    };
    private static final double[][] LIFT = {
        {.1040, .1846, .2460, .1984, .1762, .1538, .1418, .1360, .1280, .1276},
        {.3624, .3362, .3049, .2475, .2073, .1856, .1702, .1584, .1485, .1464},
        {.4005, .3640, .3347, .2862, .2384, .2149, .1977, .1807, .1690, .1582},
        {.4644, .4227, .3724, .3393, .3005, .2662, .2507, .2254, .2100, .2000}
    };

    private static final MonotoneCubic[] DRAG_BY_SPEED = curves(DRAG);
    private static final MonotoneCubic[] LIFT_BY_SPEED = curves(LIFT);

    static final BearmanHarvey MODEL = new BearmanHarvey();

    private BearmanHarvey() {}

    @Override
    public double drag(double spinRatio, double reynolds) {
        double speedMps = reynolds * MPS_PER_REYNOLDS;
        double rpm = rpm(spinRatio, speedMps);
        double tableRpm = tableRpm(rpm);
        double[] rows = MonotoneCubic.values(DRAG_BY_SPEED, rpm > MOST_RPM ? speedMps * tableRpm / rpm : speedMps);
        double[] slopes = MonotoneCubic.slopes(RPM, rows);
        if (rpm < LEAST_RPM) {
            double share = rpm / LEAST_RPM;
            return rows[0] - slopes[0] * LEAST_RPM * (1 - share * share) / 2;
        }
        return between(rows, slopes, tableRpm);
    }

    @Override
    public double lift(double spinRatio, double reynolds) {
        double speedMps = reynolds * MPS_PER_REYNOLDS;
        double rpm = rpm(spinRatio, speedMps);
        double tableRpm = tableRpm(rpm);
        double[] rows = MonotoneCubic.values(LIFT_BY_SPEED, rpm > MOST_RPM ? speedMps * tableRpm / rpm : speedMps);
        double[] slopes = MonotoneCubic.slopes(RPM, rows);
        if (rpm < LEAST_RPM) {
            return rows[0] * Math.pow(rpm / LEAST_RPM, slopes[0] * LEAST_RPM / rows[0]);
        }
        return between(rows, slopes, tableRpm);
    }

    @Override
    public boolean extendedFor(double spinRatio, double reynolds) {
        double speedMps = reynolds * MPS_PER_REYNOLDS;
        double rpm = rpm(spinRatio, speedMps);
        boolean spinInside = rpm >= LEAST_RPM && rpm <= MOST_RPM;
        return !(spinInside && speedMps >= SPEED_MPS[0] && speedMps <= SPEED_MPS[SPEED_MPS.length - 1]);
    }

    private static double rpm(double spinRatio, double speedMps) {
        return spinRatio * speedMps / Ball.STANDARD.radiusM() * BallStart.RPM_PER_RAD_PER_S;
    }

    private static double tableRpm(double rpm) {
        return rpm <= MOST_RPM ? rpm : MOST_RPM + RPM_REACH * Math.tanh((rpm - MOST_RPM) / RPM_REACH);
    }

    private static double between(double[] rows, double[] slopes, double rpm) {
        int interval = rpm < RPM[1] ? 0 : rpm < RPM[2] ? 1 : 2;
        return MonotoneCubic.piece(RPM, rows, slopes, interval, rpm);
    }

    private static MonotoneCubic[] curves(double[][] rows) {
        MonotoneCubic[] curves = new MonotoneCubic[rows.length];
        for (int i = 0; i < rows.length; i++) {
            curves[i] = new MonotoneCubic(SPEED_MPS, rows[i], SPEED_REACH_MPS);
        }
        return curves;
    }
}
