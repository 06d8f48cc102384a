package org.evenfall.wizard.picture;

import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.HeightResult;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** Where to hold the tape: ground, crop, machine and chain to one scale. */
public final class HeightPicture extends Picture {

    private final Sentences words;
    private @Nullable HeightResult result;

    public HeightPicture(Sentences words) {
        this.words = words;
    }

    public void show(@Nullable HeightResult shown) {
        result = shown;
        changed();
    }

    @Override
    protected void draw(double width, double height) {
        double crop = result == null ? 0.25 : result.cropLaterM();
        double over = result == null ? 0.75 : result.wantedOverCropM();
        double ground = height - 3.2 * em();
        double scale = (ground - 3 * em()) / Math.max(1.3, crop + over + 0.35);
        double top = ground - crop * scale;
        double machine = ground - (crop + over) * scale;
        for (double x = em(); x < width - em(); x += 0.55 * em()) {
            double blade = crop * scale * (0.94 + 0.06 * Math.sin(7 * x));
            line(x, ground, x + 0.12 * em() * Math.sin(x), ground - blade, "p-good-line");
        }
        line(0.5 * em(), ground, width - 0.5 * em(), ground, "p-ink-line");
        text(0.7 * em(), ground + 1.2 * em(), At.LEFT, "p-soft", words.text("picture.ground"));
        double left = width * 0.40;
        double right = width - 2 * em();
        box(left, machine - 0.9 * em(), right - left, 0.9 * em(), "p-ink");
        polygon(
                "p-paper p-outline",
                left + em(),
                machine - 4.4 * em(),
                right - em(),
                machine - 4.4 * em(),
                (left + right) / 2 + 2 * em(),
                machine - 0.9 * em(),
                (left + right) / 2 - 2 * em(),
                machine - 0.9 * em());
        double tape = left + 2.5 * em();
        arrow(tape, top, tape, machine, "p-accent-line");
        arrow(tape, machine, tape, top, "p-accent-line");
        line(em(), top, right, top, "p-dash");
        label(tape + 0.6 * em(), (top + machine) / 2, "picture.overCrop", over);
        double plumb = width * 0.14;
        arrow(plumb, ground, plumb, machine, "p-straw-line");
        arrow(plumb, machine, plumb, ground, "p-straw-line");
        line(plumb - 0.8 * em(), machine, left, machine, "p-dash");
        label(plumb + 0.6 * em(), machine + 1.4 * em(), "picture.overGround", crop + over);
        label(1.2 * em(), top - 0.9 * em(), "picture.cropTop", crop);
        if (result != null) {
            double chain = right - 3 * em();
            line(chain, top - result.chainM() * scale, chain, top, "p-chain");
            text(
                    chain - 0.6 * em(),
                    top - 1.2 * em(),
                    At.RIGHT,
                    "p-bold",
                    words.text("picture.chain", Arg.number(100 * result.chainM(), 0, Unit.CM)));
        } else {
            text(width / 2, 1.2 * em(), At.MIDDLE, "p-soft", words.text("picture.example"));
        }
    }

    private void label(double x, double y, String key, double metres) {
        text(x, y, At.LEFT, "p-bold", words.text(key, Arg.number(100 * metres, 0, Unit.CM)));
    }
}
