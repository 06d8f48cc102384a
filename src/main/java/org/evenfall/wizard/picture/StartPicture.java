package org.evenfall.wizard.picture;

import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** The job from above: tramlines, and how far the product has to fly to meet its neighbour. */
public final class StartPicture extends Picture {

    private final Sentences words;
    private @Nullable Double widthM;

    public StartPicture(Sentences words) {
        this.words = words;
    }

    public void show(@Nullable Double tramlineWidthM) {
        widthM = tramlineWidthM;
        changed();
    }

    @Override
    protected void draw(double width, double height) {
        double[] lines = {width * 0.2, width * 0.5, width * 0.8};
        double top = 3 * em();
        double bottom = height - 5 * em();
        for (double x : lines) {
            line(x - 0.35 * em(), top, x - 0.35 * em(), bottom, "p-track");
            line(x + 0.35 * em(), top, x + 0.35 * em(), bottom, "p-track");
        }
        double y = top + (bottom - top) * 0.45;
        box(lines[1] - 1.2 * em(), y, 2.4 * em(), 1.6 * em(), "p-ink");
        double fan = (lines[2] - lines[1]) * 0.95;
        for (int i = 0; i <= 8; i++) {
            double angle = Math.PI * (0.12 + 0.76 * i / 8);
            double reach = fan * (0.55 + 0.45 * Math.abs(Math.cos(angle)));
            line(
                    lines[1],
                    y + 1.6 * em(),
                    lines[1] + reach * Math.cos(angle),
                    y + 1.6 * em() + reach * Math.sin(angle) * 0.55,
                    "p-straw-line");
        }
        arrow(lines[1], top + 2.4 * em(), lines[1], top, "p-accent-line");
        double measure = bottom + 1.2 * em();
        arrow(lines[1], measure, lines[2], measure, "p-accent-line");
        arrow(lines[2], measure, lines[1], measure, "p-accent-line");
        String label = widthM == null
                ? words.text("field.tramlineWidth")
                : words.text("picture.tramlines", Arg.number(widthM, 0, Unit.M));
        text(width / 2, measure + 1.8 * em(), At.MIDDLE, "p-bold", label);
    }
}
