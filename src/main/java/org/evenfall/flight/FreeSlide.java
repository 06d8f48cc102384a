package org.evenfall.flight;

/**
 * A granule that slides on the disc without touching the vane: in the disc's frame with centrifugal and Coriolis
 * acceleration and friction on the disc, stepped by the classical fourth-order Runge-Kutta method in steps of a
 * two-thousandth of a turn. Ends when it meets the vane or passes the rim.
 */
final class FreeSlide {

    private final double radius;
    private final double vaneY;
    private final double friction;
    private final double omega;
    private final double gravity;

    private double[] state = new double[4];
    private double time;
    private boolean left;

    FreeSlide(double radius, double vaneY, double friction, double omega, double gravity) {
        this.radius = radius;
        this.vaneY = vaneY;
        this.friction = friction;
        this.omega = omega;
        this.gravity = gravity;
    }

    FreeSlide from(double start) {
        state = new double[] {start, vaneY, 0, 0};
        double h = 2 * Math.PI / omega / 2000;
        for (int step = 0; step < 20_000; step++) {
            double[] before = state;
            state = step(state, h);
            time += h;
            if (Math.hypot(state[0], state[1]) >= radius) {
                left = true;
                back(before, h);
                return this;
            }
            if (step > 0 && state[1] <= vaneY) {
                return this;
            }
        }
        return this;
    }

    /** Shortens the last step so that it ends on the rim. */
    private void back(double[] before, double h) {
        double low = 0;
        double high = h;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            double[] there = step(before, middle);
            if (Math.hypot(there[0], there[1]) >= radius) {
                high = middle;
            } else {
                low = middle;
            }
        }
        state = step(before, high);
        time += high - h;
    }

    private double[] step(double[] s, double h) {
        double[] k1 = slope(s);
        double[] k2 = slope(plus(s, h / 2, k1));
        double[] k3 = slope(plus(s, h / 2, k2));
        double[] k4 = slope(plus(s, h, k3));
        double[] next = new double[4];
        for (int i = 0; i < 4; i++) {
            next[i] = s[i] + h / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
        }
        return next;
    }

    private double[] slope(double[] s) {
        double speed = Math.hypot(s[2], s[3]);
        double brakeX = speed > 1e-9 ? friction * gravity * s[2] / speed : 0;
        double brakeY = speed > 1e-9 ? friction * gravity * s[3] / speed : 0;
        return new double[] {
            s[2],
            s[3],
            omega * omega * s[0] + 2 * omega * s[3] - brakeX,
            omega * omega * s[1] - 2 * omega * s[2] - brakeY
        };
    }

    private static double[] plus(double[] s, double h, double[] k) {
        return new double[] {s[0] + h * k[0], s[1] + h * k[1], s[2] + h * k[2], s[3] + h * k[3]};
    }

    double x() {
        return state[0];
    }

    double vx() {
        return state[2];
    }

    double timeS() {
        return time;
    }

    boolean hasLeftDisc() {
        return left;
    }

    VaneOutlet outlet() {
        return Vane.tip(time, state[0], state[1], state[2], state[3], omega, radius);
    }
}
