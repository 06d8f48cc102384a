package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.paint.Color;
import org.evenfall.trays.TrayLayout;
import org.evenfall.trays.WheelMarks;
import org.jspecify.annotations.Nullable;

/** Three tramlines from above, to scale across the travel: wheel marks, midway lines, trays, arrows of the passes. */
final class StripFromAbove {

    /** Drawn beyond the outer tramlines, in tramline widths. */
    private static final double REACH = 1.2;

    /** Width of the sketch while the real one is not known, m. */
    private static final double SKETCH_M = 24;

    private final Brush brush;
    private final @Nullable TrayLayout layout;
    private final double widthM;
    private final Scale across;

    /** @param tramlineWidthM null: as a sketch */
    StripFromAbove(Brush brush, @Nullable TrayLayout layout, @Nullable Double tramlineWidthM, double width) {
        this.brush = brush;
        this.layout = layout;
        double known = tramlineWidthM == null ? SKETCH_M : tramlineWidthM;
        widthM = layout == null ? known : layout.tramlineWidthM();
        across = new Scale(-REACH * widthM, REACH * widthM, 0, width);
    }

    Scale across() {
        return across;
    }

    /** Where the passes drive, px. */
    List<Double> passes() {
        List<Double> places = layout == null ? List.of(-widthM, 0.0, widthM) : layout.passesM();
        return places.stream().map(across::at).toList();
    }

    /** Half the distance between two tramlines, px. */
    double half() {
        return across.length(widthM / 2);
    }

    /** Wheel marks of each pass and the lines midway between them. */
    void ground(double top, double foot) {
        WheelMarks wheels = layout == null ? WheelMarks.USUAL : layout.wheels();
        double track = Math.max(0.35 * brush.em(), across.length(wheels.trackM() / 2));
        double tyre = Math.max(2, across.length(wheels.tyreM())) / Math.max(1, brush.em() / 15);
        for (double x : passes()) {
            brush.line(x - track, top, x - track, foot, brush.palette().line(), tyre);
            brush.line(x + track, top, x + track, foot, brush.palette().line(), tyre);
        }
        for (double side : new double[] {-1, 1}) {
            double x = across.at(0) + side * half();
            brush.dashed(x, top, x, foot, brush.palette().soft(), 1);
        }
    }

    /** Arrow of one pass between two heights; forward is up. */
    void arrow(double x, boolean forward, double top, double foot) {
        Color accent = brush.palette().accent();
        new Marks(brush).arrow(x, forward ? foot : top, x, forward ? top : foot, accent, 2.5);
    }

    /** The trays in their row, drawn larger than they are; those in a wheel mark as triangles. */
    void trays(double y) {
        if (layout == null) {
            return;
        }
        List<Double> places = layout.positionsM();
        double first = across.at(places.get(0));
        double last = across.at(places.get(places.size() - 1));
        double side = side();
        brush.line(first, y, last, y, brush.palette().soft(), 1);
        for (int i = 0; i < places.size(); i++) {
            double x = across.at(places.get(i));
            if (layout.inWheelMarks().contains(i)) {
                new Marks(brush).triangle(x, y, 0.75 * side, brush.palette().warn());
            } else {
                brush.box(
                        x - side / 2, y - side / 2, side, side, brush.palette().straw());
                brush.frame(
                        x - side / 2, y - side / 2, side, side, brush.palette().ink(), 1);
            }
        }
    }

    /** Side of a tray as drawn, px. */
    double side() {
        if (layout == null) {
            return 0;
        }
        double closest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < layout.positionsM().size(); i++) {
            closest = Math.min(
                    closest,
                    across.length(
                            layout.positionsM().get(i) - layout.positionsM().get(i - 1)));
        }
        return Math.max(3, Math.min(0.95 * brush.em(), 0.6 * closest));
    }
}
