package org.evenfall.wizard.picture;

import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.rate.RatePlan;
import org.jspecify.annotations.Nullable;

/** One pass over the field from above, with the flow of each outlet; below it the hopper loads for the whole area. */
public final class RunPicture extends Picture {

    /** More loads than this are only written. */
    private static final int MOST_DRAWN = 24;

    private static final double LOADS_EM = 5;

    private @Nullable RatePlan plan;
    private @Nullable Double widthM;

    /** Begins with nothing to show. */
    public RunPicture(Sentences words) {
        super(words, 1);
        show(null, null);
    }

    /** @param tramlineWidthM null while it is not known */
    public void show(@Nullable RatePlan planned, @Nullable Double tramlineWidthM) {
        plan = planned;
        widthM = tramlineWidthM;
        redraw(spoken(planned));
    }

    private String spoken(@Nullable RatePlan planned) {
        return planned == null || planned.flow().outletKgPerMin() == null
                ? words.text("picture.run.empty")
                : words.text("picture.run.spoken", Arg.number(planned.flow().outletKgPerMin(), 1, Unit.KG_PER_MIN));
    }

    @Override
    void draw(Brush brush, double width, double height) {
        RatePlan planned = plan;
        double em = brush.em();
        double room = height;
        if (planned != null && planned.logistics().hopperLoads() != null) {
            room = height - LOADS_EM * em;
            loads(brush, planned.logistics().hopperLoads(), room, width);
        }
        if (planned == null || planned.flow().speedKmPerH() == null) {
            room = new Caption(words.text("picture.run.empty")).draw(brush, width, room);
        }
        pass(brush, planned, width, room);
    }

    /** The strip between the next tramlines, driven upwards. */
    private void pass(Brush brush, @Nullable RatePlan planned, double width, double height) {
        double em = brush.em();
        Palette palette = brush.palette();
        double half = Math.min(0.38 * width, 0.5 * height);
        double middle = width / 2;
        double top = 2.6 * em;
        double foot = height - 1.4 * em;
        double machine = top + 0.62 * (foot - top);
        brush.box(middle - half, machine, 2 * half, foot - machine, Palette.faint(palette.straw(), 0.2));
        for (double wheel : new double[] {-0.5, 0.5}) {
            brush.line(middle + wheel * em, top, middle + wheel * em, foot, palette.line(), 4);
        }
        for (int side : new int[] {-1, 1}) {
            brush.dashed(middle + side * half, top, middle + side * half, foot, palette.soft(), 1.5);
            new Marks(brush)
                    .arrow(
                            middle + side * 1.2 * em,
                            machine,
                            middle + side * 0.92 * half,
                            machine,
                            palette.straw(),
                            2.5);
            if (planned != null && planned.flow().outletKgPerMin() != null) {
                double inner = middle + side * 1.2 * em;
                double outer = middle + side * half;
                brush.within(
                        words.number(planned.flow().outletKgPerMin(), 1, Unit.KG_PER_MIN),
                        (inner + outer) / 2,
                        machine + 1.2 * em,
                        brush.body().heavy().in(palette.straw()),
                        TextAlignment.CENTER,
                        Math.min(inner, outer),
                        Math.max(inner, outer));
            }
        }
        Parts parts = new Parts(brush);
        parts.disc(middle - 0.9 * em, machine, 0.8 * em, 0.4);
        parts.disc(middle + 0.9 * em, machine, 0.8 * em, -0.4);
        new Marks(brush).arrow(middle, machine - 1.4 * em, middle, top + 1.8 * em, palette.accent(), 3);
        if (planned != null && planned.flow().speedKmPerH() != null) {
            brush.onPaper(
                    words.number(planned.flow().speedKmPerH(), 1, Unit.KM_PER_H),
                    middle,
                    top + 0.8 * em,
                    brush.lead().in(palette.accent()),
                    TextAlignment.CENTER,
                    0,
                    width);
        }
        if (widthM != null) {
            new Marks(brush).across(middle - half, middle + half, 1.7 * em, palette.ink());
            brush.within(
                    words.text("picture.tramlines", Arg.number(widthM, 0, Unit.M)),
                    middle,
                    0.7 * em,
                    brush.body().heavy(),
                    TextAlignment.CENTER,
                    0,
                    width);
        }
    }

    /** A hopper for each load, the last one as full as it is. */
    private void loads(Brush brush, double loads, double top, double width) {
        double em = brush.em();
        Palette palette = brush.palette();
        int count = (int) Math.ceil(loads - 1e-9);
        if (count <= MOST_DRAWN) {
            double step = Math.min(2.6 * em, (width - 2 * em) / count);
            double left = (width - count * step) / 2;
            for (int i = 0; i < count; i++) {
                double full = Math.min(1, loads - i);
                double high = 1.9 * em;
                double x = left + i * step + 0.1 * step;
                brush.box(
                        x,
                        top + 0.5 * em + (1 - full) * high,
                        0.8 * step,
                        full * high,
                        Palette.faint(palette.straw(), 0.4));
                brush.frame(x, top + 0.5 * em, 0.8 * step, high, palette.ink(), 1.2);
            }
        }
        brush.within(
                words.text("picture.run.loads", Arg.number(loads, 1, Unit.NONE)),
                width / 2,
                top + 3.4 * em,
                brush.body().heavy(),
                TextAlignment.CENTER,
                0,
                width);
    }
}
