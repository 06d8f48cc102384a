package org.evenfall.flight;

import org.jspecify.annotations.Nullable;

/**
 * One flight in the plane, stepped until it lands, by the Runge-Kutta pair of Dormand and Prince 5(4). A sphere is stepped
 * not in time but in τ with dτ = (drag over speed) dt: its level speed then falls as e^−τ whatever the drag, all else is
 * smooth, and a flight takes a handful of steps. Under any other law the step is time. The last stage of a step is the
 * first of the next; the landing is found on a cubic through both ends of the last step, which is then taken anew with
 * that length. Not shared between threads; may be used for one flight after the other.
 */
final class DormandPrince {

    /** Allowed local error a step, relative to the speed. With it landings are within 6e-6 (tested over 500 flights). */
    static final double TOLERANCE = 5e-7;

    private static final int MOST_STEPS = 100_000;
    private static final double FIRST_TAU = 0.15;

    /** A landing missed by less than this time is mended along the curve, s. */
    private static final double NEAR_S = 3e-4;

    private static final long ONE_BITS = Double.doubleToRawLongBits(1);

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

    // slope at the start of a step and time for each unit of it, carried over from the end of the last one
    private double startU;
    private double startW;
    private double startT;

    // the state after a trial step, its slope, and its error against the embedded fourth-order solution
    private double nextX;
    private double nextY;
    private double nextU;
    private double nextW;
    private double nextSlopeU;
    private double nextSlopeW;
    private double nextSlopeT;
    private double nextTime;
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
        double h = pieces != null ? FIRST_TAU : Math.min(0.05, 0.3 / (law(u, w) + 0.3));
        for (int step = 0; step < MOST_STEPS; step++) {
            advance(h);
            if (error > 1) {
                h *= Math.max(0.2, 0.8 * fifthRoot(error));
                continue;
            }
            double grown = h * Math.min(3, 0.8 * fifthRoot(Math.max(error, 1e-10)));
            double joint = joint(h);
            if (joint < 1) {
                h *= joint;
                advance(h);
            }
            if (nextY <= 0 && nextW < 0) {
                land(h);
                return;
            }
            accept();
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
            boolean rising = -square / law(u, w) - gravity * w > 0;
            pieces.enter(square, rising);
        }
        double k = law(u, w);
        startT = pieces != null ? k : 1;
        startU = slopeU(k, u);
        startW = slopeW(k, w);
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
        // Newton from the chord: the square of the speed bends gently over a step
        double share = (bound - from) / rise;
        for (int i = 0; i < 8; i++) {
            double square = from + share * (slope0 + share * (c2 + share * c3));
            double slope = slope0 + share * (2 * c2 + share * 3 * c3);
            double next = Math.max(0, Math.min(1, share - (square - bound) / slope));
            if (Math.abs(next - share) < 1e-9) {
                break;
            }
            share = next;
        }
        return Double.isNaN(share) ? 1 : share;
    }

    /** error^(-1/5) by a straight line in the binary exponent, within 3 %: enough to choose a step. */
    private static double fifthRoot(double of) {
        long bits = Double.doubleToRawLongBits(of);
        return Double.longBitsToDouble(ONE_BITS - (bits - ONE_BITS) / 5);
    }

    /** Takes the last step anew with the length at which it meets the ground, then follows the curve for the rest. */
    private void land(double trial) {
        double h = trial;
        for (int i = 0; i < 8; i++) {
            h *= crossing(h);
            advance(h);
            double rest = -nextY / nextW;
            if (Math.abs(rest) < NEAR_S) {
                accept();
                double u1 = startU / startT;
                double w1 = startW / startT;
                rest += 0.5 * rest * rest * w1 / -w;
                x += rest * (u + 0.5 * rest * u1);
                time += rest;
                u += rest * u1;
                w += rest * w1;
                y = 0;
                return;
            }
            if (nextY > 0) {
                accept();
                h = 1.5 * rest / startT;
                advance(h);
            }
        }
        accept();
        y = 0;
    }

    /** Share of the trial step at which the height is 0: root of the cubic through both ends and their slopes. */
    private double crossing(double h) {
        double v0 = h * w * startT;
        double v1 = h * nextW * nextSlopeT;
        double rise = nextY - y;
        double c2 = 3 * rise - 2 * v0 - v1;
        double c3 = v0 + v1 - 2 * rise;
        double low = 0;
        double high = 1;
        double s = y / (y - nextY);
        for (int i = 0; i < 60; i++) {
            double height = y + s * (v0 + s * (c2 + s * c3));
            if (height > 0) {
                low = s;
            } else {
                high = s;
            }
            double newton = s - height / (v0 + s * (2 * c2 + s * 3 * c3));
            double next = newton > low && newton < high ? newton : 0.5 * (low + high);
            if (Math.abs(next - s) < 1e-9) {
                return next;
            }
            s = next;
        }
        return s;
    }

    private void accept() {
        x = nextX;
        y = nextY;
        u = nextU;
        w = nextW;
        startU = nextSlopeU;
        startW = nextSlopeW;
        startT = nextSlopeT;
        time = nextTime;
    }

    /** What the law says at a velocity: of a sphere the time for a unit of τ, s; under any other law drag over speed, 1/s. */
    private double law(double vu, double vw) {
        double square = vu * vu + vw * vw;
        if (pieces != null) {
            return pieces.clock(square);
        }
        double speed = Math.sqrt(square);
        return speed > 0 ? drag.perM(speed) * speed : 0;
    }

    private double slopeU(double law, double vu) {
        return pieces != null ? -vu : -law * vu;
    }

    private double slopeW(double law, double vw) {
        return pieces != null ? -vw - gravity * law : -law * vw - gravity;
    }

    /** One step of the pair. */
    private void advance(double h) {
        boolean sphere = pieces != null;
        double t1 = startT;
        double u1 = startU;
        double w1 = startW;

        double pu = u + h * u1 / 5;
        double pw = w + h * w1 / 5;
        double k = law(pu, pw);
        double u2 = slopeU(k, pu);
        double w2 = slopeW(k, pw);

        double vu3 = u + h * (3.0 / 40 * u1 + 9.0 / 40 * u2);
        double vw3 = w + h * (3.0 / 40 * w1 + 9.0 / 40 * w2);
        k = law(vu3, vw3);
        double t3 = sphere ? k : 1;
        double u3 = slopeU(k, vu3);
        double w3 = slopeW(k, vw3);

        double vu4 = u + h * (44.0 / 45 * u1 - 56.0 / 15 * u2 + 32.0 / 9 * u3);
        double vw4 = w + h * (44.0 / 45 * w1 - 56.0 / 15 * w2 + 32.0 / 9 * w3);
        k = law(vu4, vw4);
        double t4 = sphere ? k : 1;
        double u4 = slopeU(k, vu4);
        double w4 = slopeW(k, vw4);

        double vu5 = u + h * (19372.0 / 6561 * u1 - 25360.0 / 2187 * u2 + 64448.0 / 6561 * u3 - 212.0 / 729 * u4);
        double vw5 = w + h * (19372.0 / 6561 * w1 - 25360.0 / 2187 * w2 + 64448.0 / 6561 * w3 - 212.0 / 729 * w4);
        k = law(vu5, vw5);
        double t5 = sphere ? k : 1;
        double u5 = slopeU(k, vu5);
        double w5 = slopeW(k, vw5);

        double vu6 = u + h * sixth(u1, u2, u3, u4, u5);
        double vw6 = w + h * sixth(w1, w2, w3, w4, w5);
        k = law(vu6, vw6);
        double t6 = sphere ? k : 1;
        double u6 = slopeU(k, vu6);
        double w6 = slopeW(k, vw6);

        nextU = u + h * sum(u1, u3, u4, u5, u6);
        nextW = w + h * sum(w1, w3, w4, w5, w6);
        nextX = x + h * sum(u * t1, vu3 * t3, vu4 * t4, vu5 * t5, vu6 * t6);
        nextY = y + h * sum(w * t1, vw3 * t3, vw4 * t4, vw5 * t5, vw6 * t6);
        nextTime = time + h * sum(t1, t3, t4, t5, t6);
        k = law(nextU, nextW);
        double t7 = sphere ? k : 1;
        nextSlopeT = t7;
        nextSlopeU = slopeU(k, nextU);
        nextSlopeW = slopeW(k, nextW);

        double scale = tolerance * (1 + Math.sqrt(u * u + w * w));
        double errorU = Math.abs(error(u1, u3, u4, u5, u6, nextSlopeU));
        double errorW = Math.abs(error(w1, w3, w4, w5, w6, nextSlopeW));
        double errorX = Math.abs(error(u * t1, vu3 * t3, vu4 * t4, vu5 * t5, vu6 * t6, nextU * t7));
        double errorY = Math.abs(error(w * t1, vw3 * t3, vw4 * t4, vw5 * t5, vw6 * t6, nextW * t7));
        error = h * Math.max(Math.max(errorU, errorW), Math.max(errorX, errorY)) / scale;
    }

    private static double sixth(double k1, double k2, double k3, double k4, double k5) {
        return 9017.0 / 3168 * k1 - 355.0 / 33 * k2 + 46732.0 / 5247 * k3 + 49.0 / 176 * k4 - 5103.0 / 18656 * k5;
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
