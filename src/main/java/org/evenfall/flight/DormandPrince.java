package org.evenfall.flight;

import org.jspecify.annotations.Nullable;

/**
 * One flight in the plane, stepped until it lands, by the Runge-Kutta pair of Dormand and Prince 5(4). The last stage of a
 * step is the first of the next; the landing is found on a quintic through both ends of the last step, which is then
 * taken anew with that length. Not shared between threads; may be used for one flight after the other.
 */
final class DormandPrince {

    /** Allowed local error a step, relative to the speed. With it landings are within 1e-6 (tested over 500 flights). */
    static final double TOLERANCE = 5e-8;

    private static final int MOST_STEPS = 100_000;

    /** A speed that settles on a joint would cross it for ever; after so many crossings it is stepped over. */
    private static final int MOST_JOINTS = 20;

    private final Flight.DragLaw drag;
    private final @Nullable SphereLaw pieces;
    private final double gravity;
    private final double tolerance;

    private double x;
    private double y;
    private double u;
    private double w;
    private double time;

    // slope at the start of a step, carried over from the end of the last one
    private double startU;
    private double startW;

    // the state after a trial step, its slope, and its error against the embedded fourth-order solution
    private double nextX;
    private double nextY;
    private double nextU;
    private double nextW;
    private double nextSlopeU;
    private double nextSlopeW;
    private double error;
    private int joints;

    DormandPrince(Flight.DragLaw drag, double gravity) {
        this(drag, gravity, TOLERANCE);
    }

    DormandPrince(Flight.DragLaw drag, double gravity, double tolerance) {
        this.drag = drag;
        this.pieces = drag instanceof SphereLaw law ? law : null;
        this.gravity = gravity;
        this.tolerance = tolerance;
    }

    double xM() {
        return x;
    }

    double timeS() {
        return time;
    }

    double u() {
        return u;
    }

    double w() {
        return w;
    }

    /** From height y over the landing plane with velocity (u, w) to y = 0 on the way down. */
    void fall(double heightM, double launchU, double launchW) {
        x = 0;
        time = 0;
        joints = 0;
        y = heightM;
        u = launchU;
        w = launchW;
        if (heightM == 0 && launchW <= 0) {
            return;
        }
        slopeAtStart();
        // a first step of a third of the time that drag takes to change the speed
        double h = Math.min(0.05, 0.3 / (pull(u, w) + 0.3));
        for (int step = 0; step < MOST_STEPS; step++) {
            advance(h);
            if (error > 1) {
                h *= Math.max(0.2, 0.9 * fifthRoot(error));
                continue;
            }
            double grown = h * Math.min(4, 0.9 * fifthRoot(Math.max(error, 1e-10)));
            double joint = joint(h);
            if (joint < 1) {
                h *= joint;
                advance(h);
            }
            if (nextY <= 0 && nextW < 0) {
                land(h);
                return;
            }
            accept(h);
            if (joint < 1) {
                joints++;
                slopeAtStart();
            }
            h = grown;
        }
        throw new IllegalArgumentException("the flight does not land");
    }

    /** Slope under the piece of the drag law that the speed belongs to. */
    private void slopeAtStart() {
        if (pieces != null) {
            double square = u * u + w * w;
            // does the speed rise? drag and gravity against the way it moves; the jump is too small to turn the sign
            pieces.enter(square, true);
            boolean rising = -pull(u, w) * square - gravity * w > 0;
            pieces.enter(square, rising);
        }
        double k = pull(u, w);
        startU = -k * u;
        startW = -k * w - gravity;
    }

    /**
     * Share of the trial step at which the speed leaves the piece of the drag law it is in, on the cubic of its square
     * through both ends; 1 when it stays in.
     */
    private double joint(double h) {
        if (pieces == null || joints >= MOST_JOINTS) {
            return 1;
        }
        double end = nextU * nextU + nextW * nextW;
        double bound;
        if (end < pieces.lowestSquare()) {
            bound = pieces.lowestSquare();
        } else if (end > pieces.highestSquare()) {
            bound = pieces.highestSquare();
        } else {
            return 1;
        }
        double from = u * u + w * w;
        double slope0 = 2 * h * (u * startU + w * startW);
        double slope1 = 2 * h * (nextU * nextSlopeU + nextW * nextSlopeW);
        double rise = end - from;
        double c2 = 3 * rise - 2 * slope0 - slope1;
        double c3 = slope0 + slope1 - 2 * rise;
        double low = 0;
        double high = 1;
        boolean falls = rise < 0;
        for (int i = 0; i < 40; i++) {
            double s = 0.5 * (low + high);
            double square = from + s * (slope0 + s * (c2 + s * c3));
            if ((square > bound) == falls) {
                low = s;
            } else {
                high = s;
            }
        }
        return high;
    }

    /** error^(-1/5), to a part in a thousand or so: enough to choose a step. */
    private static double fifthRoot(double of) {
        return Math.exp(-0.2 * Math.log(of));
    }

    /** Takes the last step anew with the length at which it meets the ground, then slides the rest along its tangent. */
    private void land(double trial) {
        double h = trial;
        for (int i = 0; i < 4; i++) {
            h *= crossing(h);
            advance(h);
            double rest = -nextY / nextW;
            if (Math.abs(rest) < 1e-6 * h) {
                accept(h);
                x += rest * (u + 0.5 * rest * startU);
                time += rest;
                u += rest * startU;
                w += rest * startW;
                y = 0;
                return;
            }
            if (nextY > 0) {
                accept(h);
                h = rest * 1.5;
                advance(h);
            }
        }
        accept(h);
        y = 0;
    }

    /** Share of the trial step at which the height is 0: root of the quintic through both ends with slope and curvature. */
    private double crossing(double h) {
        double v0 = h * w;
        double v1 = h * nextW;
        double a0 = h * h * startW;
        double a1 = h * h * nextSlopeW;
        double rise = nextY - y;
        double c3 = 10 * rise - 6 * v0 - 4 * v1 - 1.5 * a0 + 0.5 * a1;
        double c4 = -15 * rise + 8 * v0 + 7 * v1 + 1.5 * a0 - a1;
        double c5 = 6 * rise - 3 * v0 - 3 * v1 - 0.5 * a0 + 0.5 * a1;
        double low = 0;
        double high = 1;
        double s = y / (y - nextY);
        for (int i = 0; i < 60; i++) {
            double height = y + s * (v0 + s * (0.5 * a0 + s * (c3 + s * (c4 + s * c5))));
            if (height > 0) {
                low = s;
            } else {
                high = s;
            }
            double slope = v0 + s * (a0 + s * (3 * c3 + s * (4 * c4 + s * 5 * c5)));
            double newton = s - height / slope;
            double next = newton > low && newton < high ? newton : 0.5 * (low + high);
            if (Math.abs(next - s) < 1e-12) {
                return next;
            }
            s = next;
        }
        return s;
    }

    private void accept(double h) {
        x = nextX;
        y = nextY;
        u = nextU;
        w = nextW;
        startU = nextSlopeU;
        startW = nextSlopeW;
        time += h;
    }

    private double pull(double vu, double vw) {
        double speed = Math.sqrt(vu * vu + vw * vw);
        return speed > 0 ? drag.perM(speed) * speed : 0;
    }

    /** One step of the pair; positions follow from the stage velocities. */
    private void advance(double h) {
        double u1 = startU;
        double w1 = startW;

        double pu = u + h * u1 / 5;
        double pw = w + h * w1 / 5;
        double k = pull(pu, pw);
        double u2 = -k * pu;
        double w2 = -k * pw - gravity;

        double vu3 = u + h * (3.0 / 40 * u1 + 9.0 / 40 * u2);
        double vw3 = w + h * (3.0 / 40 * w1 + 9.0 / 40 * w2);
        k = pull(vu3, vw3);
        double u3 = -k * vu3;
        double w3 = -k * vw3 - gravity;

        double vu4 = u + h * (44.0 / 45 * u1 - 56.0 / 15 * u2 + 32.0 / 9 * u3);
        double vw4 = w + h * (44.0 / 45 * w1 - 56.0 / 15 * w2 + 32.0 / 9 * w3);
        k = pull(vu4, vw4);
        double u4 = -k * vu4;
        double w4 = -k * vw4 - gravity;

        double vu5 = u + h * (19372.0 / 6561 * u1 - 25360.0 / 2187 * u2 + 64448.0 / 6561 * u3 - 212.0 / 729 * u4);
        double vw5 = w + h * (19372.0 / 6561 * w1 - 25360.0 / 2187 * w2 + 64448.0 / 6561 * w3 - 212.0 / 729 * w4);
        k = pull(vu5, vw5);
        double u5 = -k * vu5;
        double w5 = -k * vw5 - gravity;

        double vu6 = u
                + h
                        * (9017.0 / 3168 * u1
                                - 355.0 / 33 * u2
                                + 46732.0 / 5247 * u3
                                + 49.0 / 176 * u4
                                - 5103.0 / 18656 * u5);
        double vw6 = w
                + h
                        * (9017.0 / 3168 * w1
                                - 355.0 / 33 * w2
                                + 46732.0 / 5247 * w3
                                + 49.0 / 176 * w4
                                - 5103.0 / 18656 * w5);
        k = pull(vu6, vw6);
        double u6 = -k * vu6;
        double w6 = -k * vw6 - gravity;

        nextU = u + h * sum(u1, u3, u4, u5, u6);
        nextW = w + h * sum(w1, w3, w4, w5, w6);
        nextX = x + h * sum(u, vu3, vu4, vu5, vu6);
        nextY = y + h * sum(w, vw3, vw4, vw5, vw6);
        k = pull(nextU, nextW);
        double u7 = -k * nextU;
        double w7 = -k * nextW - gravity;
        nextSlopeU = u7;
        nextSlopeW = w7;

        double scale = tolerance * (1 + Math.sqrt(u * u + w * w));
        double errorU = h * error(u1, u3, u4, u5, u6, u7) / scale;
        double errorW = h * error(w1, w3, w4, w5, w6, w7) / scale;
        double errorX = h * error(u, vu3, vu4, vu5, vu6, nextU) / scale;
        double errorY = h * error(w, vw3, vw4, vw5, vw6, nextW) / scale;
        error = Math.max(Math.max(Math.abs(errorU), Math.abs(errorW)), Math.max(Math.abs(errorX), Math.abs(errorY)));
    }

    private static double sum(double k1, double k3, double k4, double k5, double k6) {
        return 35.0 / 384 * k1 + 500.0 / 1113 * k3 + 125.0 / 192 * k4 - 2187.0 / 6784 * k5 + 11.0 / 84 * k6;
    }

    private static double error(double k1, double k3, double k4, double k5, double k6, double k7) {
        return 71.0 / 57600 * k1
                - 71.0 / 16695 * k3
                + 71.0 / 1920 * k4
                - 17253.0 / 339200 * k5
                + 22.0 / 525 * k6
                - 1.0 / 40 * k7;
    }
}
