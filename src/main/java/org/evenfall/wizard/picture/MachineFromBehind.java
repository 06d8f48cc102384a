package org.evenfall.wizard.picture;

import javafx.scene.paint.Color;

/** The broadcaster on its tractor, seen from behind: a plain drawing of a hopper, a frame, two discs, two wheels. */
final class MachineFromBehind {

    private static final double FRAME = 0.645;
    private static final double[][] HOPPER = {
        {-0.75, 0.93},
        {0.75, 0.93},
        {0.75, 0.84},
        {0.48, 0.57},
        {0.32, 0.57},
        {0, 0.72},
        {-0.32, 0.57},
        {-0.48, 0.57},
        {-0.75, 0.84}
    };
    private static final double[][] BEAM = {{-0.85, 0.66}, {0.85, 0.66}, {0.85, 0.63}, {-0.85, 0.63}};
    private static final double[][] SHAFT = {{0.38, 0.57}, {0.42, 0.57}, {0.42, 0.42}, {0.38, 0.42}};
    private static final double[][] GUARD = {
        {0.06, 0.5}, {0.78, 0.5}, {0.78, 0.46}, {0.76, 0.46}, {0.76, 0.485}, {0.06, 0.485}
    };

    private final Brush brush;
    private final Scale across;
    private final Scale up;
    private final double lean;

    /**
     * @param across from -1 at the left wheel to 1 at the right one
     * @param up from 0 on the ground to 1
     * @param lean angle by which the machine hangs down at the right, radians
     */
    MachineFromBehind(Brush brush, Scale across, Scale up, double lean) {
        this.brush = brush;
        this.across = across;
        this.up = up;
        this.lean = lean;
    }

    void draw() {
        Palette palette = brush.palette();
        wheel(-1);
        wheel(1);
        brush.line(across.start() - 6, up.start(), across.end() + 6, up.start(), palette.ink(), 1.5);
        part(HOPPER, 1, Palette.faint(palette.straw(), 0.18));
        part(BEAM, 1, palette.soft());
        for (double side : new double[] {-1, 1}) {
            part(SHAFT, side, palette.soft());
            part(GUARD, side, palette.soft());
            double[] centre = disc(side);
            brush.oval(centre[0], centre[1], across.length(0.31), up.length(0.035), Palette.faint(palette.ink(), 0.85));
        }
        if (lean != 0) {
            brush.dashed(across.at(-0.95), up.at(FRAME), across.at(0.95), up.at(FRAME), palette.accent(), 1.2);
        }
    }

    /** Middle of a disc, -1 left, 1 right. */
    double[] disc(double side) {
        return place(side * 0.4, 0.39);
    }

    /** One vane on a disc, turned so far. */
    void vane(double side, double turn, Color colour) {
        double[] centre = disc(side);
        brush.line(
                centre[0],
                centre[1],
                centre[0] + across.length(0.27) * Math.cos(turn),
                centre[1] + up.length(0.028) * Math.sin(turn),
                colour,
                2);
    }

    /** Pixels of a place on the machine, which leans round the middle of its frame. */
    double[] place(double x, double y) {
        double dx = across.at(x) - across.at(0);
        double dy = up.at(y) - up.at(FRAME);
        return new double[] {
            across.at(0) + dx * Math.cos(lean) - dy * Math.sin(lean),
            up.at(FRAME) + dx * Math.sin(lean) + dy * Math.cos(lean)
        };
    }

    private void wheel(double side) {
        Palette palette = brush.palette();
        double inner = across.at(side * 0.72);
        double outer = across.at(side);
        brush.box(
                Math.min(inner, outer),
                up.at(0.5),
                Math.abs(outer - inner),
                up.length(0.5),
                Palette.faint(palette.soft(), 0.18));
        for (int lug = 0; lug < 7; lug++) {
            double y = 0.03 + 0.07 * lug;
            brush.line(inner, up.at(y), outer, up.at(Math.min(0.5, y + 0.03)), Palette.faint(palette.soft(), 0.5), 2);
        }
    }

    private void part(double[][] corners, double side, Color fill) {
        double[] x = new double[corners.length];
        double[] y = new double[corners.length];
        for (int i = 0; i < corners.length; i++) {
            double[] at = place(side * corners[i][0], corners[i][1]);
            x[i] = at[0];
            y[i] = at[1];
        }
        brush.shape(x, y, fill);
        brush.outline(x, y, brush.palette().soft(), 1.5);
    }
}
