package org.evenfall.wizard.picture;

import javafx.scene.paint.Color;

/** Small drawings of the bucket test: key out, bucket hung, outlet open, nobody near. */
record BucketDrawings(Brush brush) {

    /** The key out of its lock. */
    void key(double left, double top, double wide, double high) {
        Color colour = brush.palette().stop();
        double size = Math.min(0.5 * wide, high);
        double x = left + wide / 2 - 0.7 * size;
        double y = top + high / 2;
        double radius = 0.22 * size;
        brush.ring(x + radius, y, radius, radius, colour, 4);
        double end = x + 1.05 * size;
        brush.line(x + 2 * radius, y, end, y, colour, 4);
        brush.line(end - 0.05 * size, y, end - 0.05 * size, y + 0.2 * size, colour, 4);
        brush.line(end - 0.25 * size, y, end - 0.25 * size, y + 0.15 * size, colour, 4);
        new Marks(brush).square(end + 0.3 * size, y, 0.14 * size, colour);
    }

    /** The bucket hung below the closed outlet. */
    void closed(double left, double top, double wide, double high) {
        hung(left, top, wide, high, false);
    }

    /** The same, the outlet open. */
    void open(double left, double top, double wide, double high) {
        hung(left, top, wide, high, true);
    }

    /** The hopper with the bucket hung below it. */
    private void hung(double left, double top, double wide, double high, boolean open) {
        Palette palette = brush.palette();
        double middle = left + wide / 2;
        double half = Math.min(0.26 * wide, 0.4 * high);
        double rim = top + 0.52 * high;
        new Parts(brush).hopper(middle - half, top, 2 * half, 0.38 * high, true);
        for (int side : new int[] {-1, 1}) {
            brush.line(
                    middle + side * 0.7 * half, top + 0.3 * high, middle + side * 0.8 * half, rim, palette.soft(), 1.2);
        }
        if (open) {
            new Marks(brush).arrow(middle, top + 0.38 * high, middle, top + 0.76 * high, palette.straw(), 4);
        }
        bucket(middle, 0.8 * half, rim, top + high);
    }

    /** An empty bucket from its rim to its foot. */
    void bucket(double middle, double half, double rim, double foot) {
        brush.polyline(
                new double[] {middle - half, middle - 0.76 * half, middle + 0.76 * half, middle + half},
                new double[] {rim, foot, foot, rim},
                brush.palette().ink(),
                2,
                false);
    }

    /** The machine with nobody near: people stay outside the ring. */
    void clear(double left, double top, double wide, double high) {
        Palette palette = brush.palette();
        double x = left + wide / 2;
        double y = top + high / 2;
        double radius = Math.min(0.3 * wide, 0.48 * high);
        brush.oval(x, y, radius, radius, Palette.faint(palette.stop(), 0.1));
        brush.ring(x, y, radius, radius, palette.stop(), 2);
        brush.box(x - 0.3 * radius, y - 0.4 * radius, 0.6 * radius, 0.8 * radius, Palette.faint(palette.ink(), 0.7));
        for (int side : new int[] {-1, 1}) {
            double at = x + side * Math.min(0.46 * wide, 1.5 * radius);
            double size = 0.2 * radius;
            brush.oval(at, y - 1.6 * size, size, size, palette.good());
            brush.box(at - size, y - 0.4 * size, 2 * size, 2.6 * size, palette.good());
        }
    }
}
