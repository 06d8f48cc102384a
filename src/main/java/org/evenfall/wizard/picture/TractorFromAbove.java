package org.evenfall.wizard.picture;

import javafx.scene.paint.Color;

/** A tractor with its machine from above, always in the same size. */
final class TractorFromAbove {

    /** Length ahead of the discs, em. */
    static final double LONG_EM = 3.4;

    private TractorFromAbove() {}

    /** A tractor ahead of the discs, in its direction of travel, with an arrow on it. */
    static void draw(Brush brush, double x, double y, double[] way, Color colour) {
        double em = brush.em();
        part(brush, x, y, way, new double[] {-0.35, 0.75, 0.75}, colour);
        part(brush, x, y, way, new double[] {0.9, 2.6, 0.4}, colour);
        new Marks(brush)
                .arrow(
                        x + 1.1 * em * way[0],
                        y + 1.1 * em * way[1],
                        x + LONG_EM * em * way[0],
                        y + LONG_EM * em * way[1],
                        brush.palette().ink(),
                        2);
    }

    /** A box along the way: from, to and half its width, em. */
    private static void part(Brush brush, double x, double y, double[] way, double[] box, Color colour) {
        double em = brush.em();
        double[] along = {box[0], box[1], box[1], box[0]};
        double[] aside = {-box[2], -box[2], box[2], box[2]};
        double[] xs = new double[along.length];
        double[] ys = new double[along.length];
        for (int i = 0; i < along.length; i++) {
            xs[i] = x + em * (along[i] * way[0] - aside[i] * way[1]);
            ys[i] = y + em * (along[i] * way[1] + aside[i] * way[0]);
        }
        brush.shape(xs, ys, Palette.faint(colour, 0.3));
        brush.outline(xs, ys, colour, 1);
    }
}
