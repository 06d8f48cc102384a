package org.evenfall.wizard.picture;

import java.util.Random;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.HeightResult;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** A chain from its hook down to the top of the crop, to scale, hung clear of the discs. */
public final class ChainPicture extends Picture {

    /** Least height that is drawn above the hook, m. */
    private static final double ABOVE_M = 0.12;

    private @Nullable HeightResult height;

    /** Begins with nothing to show. */
    public ChainPicture(Sentences words) {
        super(words, 1);
        show(null);
    }

    /** Draws this; null: nothing yet. */
    public void show(@Nullable HeightResult result) {
        height = result;
        redraw((result == null ? words.text("picture.chain.empty") : length(result))
                + " "
                + words.text("picture.chain.takeOff"));
    }

    private String length(HeightResult result) {
        return words.text("picture.chain.length", Arg.number(100 * result.chainM(), 0, Unit.CM));
    }

    @Override
    void draw(Brush brush, double width, double full) {
        HeightResult result = height;
        if (result == null) {
            nothingYet(brush, width, full, words.text("picture.chain.empty"));
            return;
        }
        double em = brush.em();
        Palette palette = brush.palette();
        double tall = new Caption(words.text("picture.chain.takeOff"))
                .draw(brush, width, full, brush.body().heavy().in(palette.warn()));
        double crop = result.crop().laterM();
        double hook = crop + result.chainM();
        double top = Math.max(hook, result.overGroundM()) + ABOVE_M;
        double high = Math.min(tall - 4.2 * em, 1.25 * width);
        double floor = (tall + high) / 2 + 0.6 * em;
        Scale up = new Scale(0, top, floor, floor - high);
        crop(brush, up, crop, width);
        double x = 0.3 * width;
        machine(brush, up, result.overGroundM(), hook, x, width);
        chain(brush, up, crop, hook, x);
        labels(brush, up, result, x, width);
    }

    private static void crop(Brush brush, Scale up, double crop, double width) {
        // the same stalks at every redraw
        Random shape = new Random(7);
        double tip = up.at(crop);
        for (double x = 0.5 * brush.em(); crop > 0.005 && x < width; x += 0.7 * brush.em()) {
            double lean = (shape.nextDouble() - 0.5) * 0.5 * brush.em();
            brush.line(
                    x,
                    up.start(),
                    x + lean,
                    up.start() - (up.start() - tip) * (0.88 + 0.12 * shape.nextDouble()),
                    Palette.faint(brush.palette().good(), 0.5),
                    1.5);
        }
        brush.line(0, up.start(), width, up.start(), brush.palette().ink(), 2);
    }

    /** The frame with the hook at one end, and a disc well to the right of the chain. */
    private void machine(Brush brush, Scale up, double reference, double hook, double x, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        double disc = 0.74 * width;
        double half = 0.18 * width;
        double beam = Math.min(up.at(hook), up.at(reference) - 1.4 * em) - 0.9 * em;
        brush.box(x - em, beam - 0.35 * em, width - x, 0.7 * em, palette.soft());
        brush.line(disc, beam, disc, up.at(reference), palette.soft(), 4);
        brush.box(disc - half, up.at(reference) - 0.35 * em, 2 * half, 0.35 * em, palette.ink());
        brush.line(x, beam, x, up.at(hook), palette.ink(), 2.5);
        new Marks(brush).disc(x, up.at(hook), 0.3 * em, palette.straw());
    }

    private static void chain(Brush brush, Scale up, double crop, double hook, double x) {
        double tip = up.at(crop);
        double from = up.at(hook);
        double link = 0.36 * brush.em();
        int links = (int) Math.max(1, Math.round((tip - from) / (1.5 * link)));
        double step = (tip - from) / links;
        for (int i = 0; i < links && tip - from > 2; i++) {
            double y = from + (i + 0.5) * step;
            if (i % 2 == 0) {
                brush.ring(x, y, 0.5 * link, 0.62 * step, brush.palette().straw(), 1.8);
            } else {
                brush.line(x, y - 0.6 * step, x, y + 0.6 * step, brush.palette().straw(), 2.5);
            }
        }
    }

    private void labels(Brush brush, Scale up, HeightResult result, double x, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        double tip = up.at(result.crop().laterM());
        Lettering bold = brush.body().heavy().in(palette.straw());
        String clear = words.text("picture.chain.clear");
        double room = width - x - 1.4 * em;
        double free = up.at(result.overGroundM()) + 0.5 * em;
        double high = 1.25 * em * (1 + brush.wrapped(clear, room, brush.body()).size());
        if (tip - free < high + 0.4 * em) {
            brush.paragraph(length(result), x + em, Math.max(free, tip - 1.8 * em), room, bold, TextAlignment.LEFT);
        } else {
            double y = brush.paragraph(length(result), x + em, (free + tip - high) / 2, room, bold, TextAlignment.LEFT);
            brush.paragraph(clear, x + em, y, room, brush.body(), TextAlignment.LEFT);
        }
        brush.within(
                words.text("picture.chain.crop", Arg.number(100 * result.crop().laterM(), 0, Unit.CM)),
                width / 2,
                up.start() + em,
                brush.body().in(palette.good()),
                TextAlignment.CENTER,
                0.3 * em,
                width - 0.3 * em);
    }
}
