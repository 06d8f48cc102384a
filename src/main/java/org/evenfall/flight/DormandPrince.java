package org.evenfall.flight;

/** One flight in the plane, stepped until it lands. Not shared between threads; not used twice. */
final class DormandPrince {

    private static final double TOLERANCE = 1e-9;
    private static final int MOST_STEPS = 100_000;

    private final Flight.DragLaw drag;
    private final double gravity;

    private double x;
    private double y;
    private double u;
    private double w;
    private double time;

    // the state after a trial step, and its error against the embedded fourth-order solution
    private double nextX;
    private double nextY;
    private double nextU;
    private double nextW;
    private double error;

    DormandPrince(Flight.DragLaw drag, double gravity) {
        this.drag = drag;
        this.gravity = gravity;
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
    void fall(double heightM, double startU, double startW) {
        y = heightM;
        u = startU;
        w = startW;
        if (heightM == 0 && startW <= 0) {
            return;
        }
        double h = 0.05;
        for (int step = 0; step < MOST_STEPS; step++) {
            advance(h);
            if (error > 1) {
                h *= Math.max(0.2, 0.9 * Math.pow(error, -0.2));
                continue;
            }
            if (nextY <= 0 && nextW < 0) {
                land(h);
                return;
            }
            accept(h);
            h *= Math.min(4, 0.9 * Math.pow(Math.max(error, 1e-10), -0.2));
        }
        throw new IllegalArgumentException("the flight does not land");
    }

    /** The last step is taken anew with its length corrected until it ends on the ground. */
    private void land(double trial) {
        double low = 0;
        double high = trial;
        double h = trial;
        for (int i = 0; i < 60; i++) {
            double newton = h - nextY / nextW;
            h = newton > low && newton < high ? newton : (low + high) / 2;
            advance(h);
            if (nextY > 0 || nextW >= 0) {
                low = h;
            } else {
                high = h;
            }
            if (Math.abs(nextY) < 1e-12 * (1 + Math.abs(y))) {
                break;
            }
        }
        accept(h);
        y = 0;
    }

    private void accept(double h) {
        x = nextX;
        y = nextY;
        u = nextU;
        w = nextW;
        time += h;
    }

    private double pull(double vu, double vw) {
        double speed = Math.sqrt(vu * vu + vw * vw);
        return speed > 0 ? drag.perM(speed) * speed : 0;
    }

    /** One step of the pair; positions follow from the stage velocities. */
    private void advance(double h) {
        double k = pull(u, w);
        double u1 = -k * u;
        double w1 = -k * w - gravity;

        double pu = u + h * u1 / 5;
        double pw = w + h * w1 / 5;
        k = pull(pu, pw);
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

        double scale = TOLERANCE * (1 + Math.sqrt(u * u + w * w));
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
