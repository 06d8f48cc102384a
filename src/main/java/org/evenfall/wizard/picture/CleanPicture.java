package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.paint.Color;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.entry.YesNo;

/** Hopper, discs and tray before another product: emptied, cleaned, dry. */
public final class CleanPicture extends Picture {

    private YesNo nitrateBefore = YesNo.UNANSWERED;
    private YesNo cleanAndDry = YesNo.UNANSWERED;

    /** Begins with nothing answered. */
    public CleanPicture(Sentences words) {
        super(words, 1.05);
        show(YesNo.UNANSWERED, YesNo.UNANSWERED);
    }

    /** Draws these answers. */
    public void show(YesNo nitrate, YesNo clean) {
        nitrateBefore = nitrate;
        cleanAndDry = clean;
        redraw(sentence());
    }

    private String sentence() {
        if (cleanAndDry == YesNo.YES) {
            return words.text("picture.clean.done");
        }
        if (cleanAndDry == YesNo.NO || nitrateBefore == YesNo.YES) {
            return words.text("picture.clean.stop");
        }
        return words.text("picture.clean.empty");
    }

    private boolean stopped() {
        return cleanAndDry != YesNo.YES && (cleanAndDry == YesNo.NO || nitrateBefore == YesNo.YES);
    }

    @Override
    void draw(Brush brush, double width, double full) {
        Palette palette = brush.palette();
        Lettering lettering = stopped()
                ? brush.body().heavy().in(palette.stop())
                : cleanAndDry == YesNo.YES ? brush.body().heavy().in(palette.good()) : brush.body();
        double height = new Caption(sentence()).draw(brush, width, full, lettering);
        List<Panels.Panel> panels = List.of(
                new Panels.Panel(words.text("picture.clean.emptied"), brush.body(), (left, top, wide, high) -> {
                    double room = Math.min(0.8 * wide, 1.3 * high);
                    double x = left + (wide - room) / 2;
                    new Parts(brush).hopper(x, top, room, 0.78 * high, false);
                    mark(brush, left, top);
                }),
                new Panels.Panel(words.text("picture.clean.cleaned"), brush.body(), (left, top, wide, high) -> {
                    double radius = Math.min(0.24 * wide, 0.34 * high);
                    for (double side : new double[] {0.25, 0.75}) {
                        new Parts(brush).disc(left + side * wide, top + 0.42 * high, radius, side);
                    }
                    brush.frame(left + 0.1 * wide, top + 0.82 * high, 0.8 * wide, 0.16 * high, palette.ink(), 2);
                    mark(brush, left, top);
                }),
                new Panels.Panel(words.text("picture.clean.dry"), brush.body(), (left, top, wide, high) -> {
                    drop(brush, left + wide / 2, top + 0.5 * high, 0.3 * Math.min(wide, high));
                    mark(brush, left, top);
                }));
        new Panels(brush, panels).draw(width, height);
    }

    /** Done, stopped or open, at the corner of a panel. */
    private void mark(Brush brush, double left, double top) {
        double radius = 0.42 * brush.em();
        Marks marks = new Marks(brush);
        double y = top + radius;
        if (stopped()) {
            marks.square(left, y, radius, brush.palette().stop());
        } else if (cleanAndDry == YesNo.YES) {
            marks.disc(left, y, radius, brush.palette().good());
        } else {
            marks.ring(left, y, radius, brush.palette().accent());
        }
    }

    /** A drop of water, struck through. */
    private static void drop(Brush brush, double x, double y, double radius) {
        Color colour = brush.palette().accent();
        int points = 40;
        double[] xs = new double[points];
        double[] ys = new double[points];
        for (int i = 0; i < points; i++) {
            double angle = 2 * Math.PI * i / points;
            xs[i] = x + radius * Math.sin(angle) * Math.pow(Math.sin(angle / 2), 1.5);
            ys[i] = y - 1.2 * radius * Math.cos(angle);
        }
        brush.shape(xs, ys, Palette.faint(colour, 0.12));
        brush.outline(xs, ys, colour, 1.5);
        brush.line(
                x - 1.1 * radius,
                y + 1.2 * radius,
                x + 1.1 * radius,
                y - 1.2 * radius,
                brush.palette().ink(),
                2.5);
    }
}
