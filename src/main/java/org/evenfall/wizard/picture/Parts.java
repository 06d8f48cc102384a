package org.evenfall.wizard.picture;

import java.util.Random;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/** Plain things that several pictures draw: a container, a hopper, granules, a bag, a tape, scales with their figure. */
final class Parts {

    /** Height of the scales, em. */
    private static final double SCALES_EM = 1.9;

    private final Brush brush;

    Parts(Brush brush) {
        this.brush = brush;
    }

    /** Granules that fill a box, the same at every redraw. */
    void granules(double left, double top, double wide, double high, double radius, long seed) {
        Random shape = new Random(seed);
        double step = 2.6 * radius;
        Color colour = Palette.faint(brush.palette().straw(), 0.6);
        for (double y = top + high - radius; y > top + radius; y -= step) {
            for (double x = left + radius; x < left + wide - radius / 2; x += step) {
                double aside = (shape.nextDouble() - 0.5) * 0.5 * radius;
                double up = (shape.nextDouble() - 0.5) * 0.5 * radius;
                brush.oval(
                        Math.min(left + wide - radius, Math.max(left + radius, x + aside)),
                        y + up,
                        radius,
                        radius,
                        colour);
            }
        }
    }

    /** An open container, filled so far from 0 to 1. */
    void container(double left, double top, double wide, double high, double level) {
        double surface = top + (1 - level) * high;
        brush.box(
                left,
                surface,
                wide,
                top + high - surface,
                Palette.faint(brush.palette().straw(), 0.18));
        granules(left, surface, wide, top + high - surface, Math.max(1.5, 0.035 * wide), 11);
        brush.polyline(
                new double[] {left, left, left + wide, left + wide},
                new double[] {top, top + high, top + high, top},
                brush.palette().ink(),
                2,
                false);
    }

    /** A hopper with its outlet at the foot; filled with product or empty. */
    void hopper(double left, double top, double wide, double high, boolean full) {
        double[] x = {left, left + wide, left + 0.62 * wide, left + 0.38 * wide};
        double[] y = {top, top, top + high, top + high};
        brush.shape(
                x,
                y,
                full
                        ? Palette.faint(brush.palette().straw(), 0.25)
                        : Palette.faint(brush.palette().soft(), 0.08));
        brush.outline(x, y, brush.palette().ink(), 2);
    }

    /** A bag with its seam; an open one has its mouth up. */
    void bag(double left, double top, double wide, double high, boolean open) {
        Palette palette = brush.palette();
        double neck = top + 0.2 * high;
        brush.box(left, neck, wide, 0.8 * high, Palette.faint(open ? palette.straw() : palette.soft(), 0.2));
        brush.frame(left, neck, wide, 0.8 * high, open ? palette.straw() : palette.soft(), open ? 2 : 1);
        if (!open) {
            brush.dashed(left, neck + 0.1 * high, left + wide, neck + 0.1 * high, palette.soft(), 1);
        } else {
            brush.polyline(
                    new double[] {left, left - 0.08 * wide, left + wide * 1.08, left + wide},
                    new double[] {neck, top, top, neck},
                    palette.straw(),
                    2,
                    false);
        }
    }

    /** A tape that is held upright, with a tick every so many pixels from its foot. */
    void tape(double x, double foot, double top, double tick, Color colour) {
        double half = 0.28 * brush.em();
        brush.box(x - half, top, 2 * half, foot - top, Palette.faint(colour, 0.14));
        brush.frame(x - half, top, 2 * half, foot - top, colour, 1.2);
        for (double y = foot - tick; tick > 2 && y > top + 1; y -= tick) {
            brush.line(x - half, y, x, y, colour, 1);
        }
    }

    /** Scales: a plate on a foot with its figure in a window. */
    void scales(double left, double foot, double wide, String figure) {
        scales(left, foot, wide, SCALES_EM * brush.em(), figure);
    }

    /** The same, lower where there is less room. */
    void scales(double left, double foot, double wide, double room, String figure) {
        double em = brush.em();
        double high = Math.min(SCALES_EM * em, room - 2);
        brush.line(
                left + 0.08 * wide,
                foot - high,
                left + 0.92 * wide,
                foot - high,
                brush.palette().ink(),
                3);
        window(left + 0.14 * wide, foot - high + 0.25 * em, 0.72 * wide, high - 0.25 * em, figure);
    }

    /** A window with a figure in it. */
    void window(double left, double top, double wide, double high, String figure) {
        Palette palette = brush.palette();
        brush.box(left, top, wide, high, Palette.faint(palette.accent(), 0.1));
        brush.frame(left, top, wide, high, palette.ink(), 1.5);
        if (high < brush.em()) {
            return;
        }
        brush.within(
                figure,
                left + wide / 2,
                top + high / 2,
                brush.body().heavy(),
                TextAlignment.CENTER,
                left + 2,
                left + wide - 2);
    }

    /** A disc from above with two vanes. */
    void disc(double x, double y, double radius, double turn) {
        Palette palette = brush.palette();
        brush.oval(x, y, 0.86 * radius, 0.86 * radius, Palette.faint(palette.soft(), 0.14));
        brush.ring(x, y, 0.86 * radius, 0.86 * radius, palette.soft(), 1.5);
        vane(x, y, turn, radius);
        vane(x, y, turn + Math.PI, radius);
        brush.oval(x, y, 0.12 * radius, 0.12 * radius, palette.ink());
    }

    private void vane(double x, double y, double turn, double tip) {
        brush.line(
                x + 0.25 * tip * Math.cos(turn),
                y + 0.25 * tip * Math.sin(turn),
                x + tip * Math.cos(turn),
                y + tip * Math.sin(turn),
                brush.palette().ink(),
                3.5);
    }
}
