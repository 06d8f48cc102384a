package org.evenfall.trays.ground;

/**
 * Throws of one size of granule at one take-off angle, from many launch speeds: air drag proportional to the square of the
 * speed with a constant K (1/m), integrated by the midpoint rule; straight between the speeds. Knows nothing of room
 * {@code flight}.
 */
final class DragThrows {

    private static final double GRAVITY = 9.81;
    private static final double TIME_STEP_S = 0.01;
    private static final double SPEED_STEP = 3;
    private static final int SPEEDS = 24;

    private final double[] distanceM = new double[SPEEDS];
    private final double[] timeS = new double[SPEEDS];

    /**
     * All throws.
     *
     * @param dragPerM K, 1/m
     */
    DragThrows(double dragPerM, double takeOffDeg, double heightM) {
        for (int i = 1; i < SPEEDS; i++) {
            fly(i, dragPerM, Math.toRadians(takeOffDeg), heightM);
        }
    }

    private void fly(int i, double dragPerM, double takeOff, double heightM) {
        double u = i * SPEED_STEP * Math.cos(takeOff);
        double w = i * SPEED_STEP * Math.sin(takeOff);
        double x = 0;
        double z = heightM;
        double t = 0;
        while (true) {
            double speed = Math.sqrt(u * u + w * w);
            double midU = u - TIME_STEP_S / 2 * dragPerM * speed * u;
            double midW = w - TIME_STEP_S / 2 * (dragPerM * speed * w + GRAVITY);
            double midSpeed = Math.sqrt(midU * midU + midW * midW);
            double nextZ = z + TIME_STEP_S * midW;
            if (nextZ <= 0) {
                double part = z / (z - nextZ);
                distanceM[i] = x + part * TIME_STEP_S * midU;
                timeS[i] = t + part * TIME_STEP_S;
                return;
            }
            x += TIME_STEP_S * midU;
            z = nextZ;
            t += TIME_STEP_S;
            u -= TIME_STEP_S * dragPerM * midSpeed * midU;
            w -= TIME_STEP_S * (dragPerM * midSpeed * midW + GRAVITY);
        }
    }

    /** Landing distance, m. */
    double distanceM(double speedMPerS) {
        return between(distanceM, speedMPerS);
    }

    /** Time of flight, s. */
    double timeS(double speedMPerS) {
        return between(timeS, speedMPerS);
    }

    private static double between(double[] values, double speedMPerS) {
        double place = Math.max(0, speedMPerS / SPEED_STEP);
        int i = Math.min(SPEEDS - 2, (int) place);
        return values[i] + (place - i) * (values[i + 1] - values[i]);
    }
}
