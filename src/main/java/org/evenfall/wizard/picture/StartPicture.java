package org.evenfall.wizard.picture;

import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** The job from above: three tramlines, the machine on the middle one, and how far apart they are. */
public final class StartPicture extends Picture {

    private @Nullable Double widthM;

    /** Begins with nothing to show. */
    public StartPicture(Sentences words) {
        super(words, 0.9);
        show(null);
    }

    /** Draws this; null: nothing yet. */
    public void show(@Nullable Double tramlineWidthM) {
        widthM = tramlineWidthM;
        redraw(label());
    }

    private String label() {
        return widthM == null
                ? words.text("field.tramlineWidth")
                : words.text("picture.tramlines", Arg.number(widthM, 0, Unit.M));
    }

    @Override
    void draw(Brush brush, double width, double height) {
        double em = brush.em();
        Palette palette = brush.palette();
        double top = 1.5 * em;
        double foot = height - 4.6 * em;
        double gap = 0.36 * width;
        double middle = width / 2;
        double y = top + 0.42 * (foot - top);
        for (int i = -1; i <= 1; i++) {
            double x = middle + i * gap;
            for (double wheel : new double[] {-0.5, 0.5}) {
                brush.line(x + wheel * em, top, x + wheel * em, foot, palette.line(), 5);
            }
        }
        // what leaves the discs, one fan for each side, a little more than midway to the neighbours and beyond
        for (int i = 0; i <= 10; i++) {
            double angle = Math.PI * (0.04 + 0.92 * i / 10);
            double reach = 0.92 * gap * (0.62 + 0.38 * Math.abs(Math.cos(angle)));
            brush.line(
                    middle,
                    y + 1.3 * em,
                    middle + reach * Math.cos(angle),
                    y + 1.3 * em + 0.55 * reach * Math.sin(angle),
                    Palette.faint(palette.straw(), 0.8),
                    1.5);
        }
        brush.box(middle - 1.3 * em, y - 0.2 * em, 2.6 * em, 1.2 * em, palette.ink());
        brush.box(middle - 0.5 * em, y - 2.4 * em, em, 2.2 * em, palette.soft());
        Marks marks = new Marks(brush);
        marks.arrow(middle, y - 2.8 * em, middle, Math.max(top, y - 6 * em), palette.accent(), 2.5);
        marks.across(middle, middle + gap, foot + 1.1 * em, palette.accent());
        brush.within(
                label(),
                middle + gap / 2,
                foot + 2.5 * em,
                brush.body().heavy().in(palette.accent()),
                TextAlignment.CENTER,
                0.3 * em,
                width - 0.3 * em);
    }
}
