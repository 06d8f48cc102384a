package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.FactorRule;
import org.evenfall.machine.RateSetting;

/** How the rate is set: a shutter on a scale, a terminal with a factor, weigh cells under the hopper. */
public final class RateSettingPicture extends Picture {

    private RateSetting setting = RateSetting.UNANSWERED;
    private FactorRule rule = FactorRule.UNANSWERED;

    /** Begins with nothing to show. */
    public RateSettingPicture(Sentences words) {
        super(words, 1.1);
        show(RateSetting.UNANSWERED, FactorRule.UNANSWERED);
    }

    /** Draws the way that was chosen; all ways while none is. */
    public void show(RateSetting chosen, FactorRule factorRule) {
        setting = chosen;
        rule = factorRule;
        redraw(sentence());
    }

    private String sentence() {
        if (setting == RateSetting.UNANSWERED) {
            return words.text("picture.rateSetting.empty");
        }
        if (!setting.byFactor()) {
            return words.text("picture.rateSetting.number");
        }
        return words.text(
                switch (rule) {
                    case UNANSWERED -> "picture.rateSetting.whichWay";
                    case CAUGHT_OVER_SHOWN -> "picture.rateSetting.caughtOverShown";
                    case SHOWN_OVER_CAUGHT -> "picture.rateSetting.shownOverCaught";
                });
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double height = new Caption(sentence()).draw(brush, width, full);
        List<Panels.Panel> panels = new ArrayList<>();
        for (RateSetting way : List.of(RateSetting.OPENING, RateSetting.FACTOR, RateSetting.WEIGHING)) {
            if (setting == RateSetting.UNANSWERED || setting == way) {
                panels.add(new Panels.Panel(
                        words.choice(way),
                        setting == way ? brush.body().heavy() : brush.body(),
                        (left, top, wide, high) -> way(brush, way, left, top, wide, high)));
            }
        }
        if (panels.size() == 1) {
            double wide = Math.min(width, 24 * brush.em());
            brush.shifted((width - wide) / 2, () -> new Panels(brush, panels).grid(wide, height, 1));
        } else {
            new Panels(brush, panels).draw(width, height);
        }
    }

    private void way(Brush brush, RateSetting way, double left, double top, double wide, double high) {
        switch (way) {
            case OPENING, UNANSWERED -> shutter(brush, left, top, wide, high);
            case FACTOR -> {
                terminal(brush, left, top, 0.6 * wide, 0.62 * high);
                wire(brush, left + 0.3 * wide, top + 0.62 * high, left + 0.62 * wide, top + 0.84 * high);
                shutterAlone(brush, left + 0.62 * wide, top + 0.68 * high, 0.36 * wide, 0.3 * high, 0.45);
            }
            case WEIGHING -> {
                weighed(brush, left, top, 0.46 * wide, high);
                terminal(brush, left + 0.54 * wide, top, 0.46 * wide, 0.5 * high);
                wire(brush, left + 0.77 * wide, top + 0.5 * high, left + 0.46 * wide, top + 0.93 * high);
            }
        }
    }

    /** A plate with its outlet, half covered by a slide, and the scale on which the slide is set. */
    private static void shutter(Brush brush, double left, double top, double wide, double high) {
        shutterAlone(brush, left, top, wide, 0.52 * high, 0.5);
        double y = top + 0.8 * high;
        Palette palette = brush.palette();
        brush.line(left, y, left + wide, y, palette.ink(), 1.5);
        for (int tick = 0; tick <= 10; tick++) {
            double x = left + tick * wide / 10;
            brush.line(x, y, x, y + (tick % 5 == 0 ? 0.12 : 0.07) * high, palette.ink(), 1.5);
        }
        new Marks(brush).arrow(left + 0.5 * wide, top + 0.54 * high, left + 0.5 * wide, y - 2, palette.accent(), 2.5);
    }

    /** @param open share of the outlet that is free */
    private static void shutterAlone(Brush brush, double left, double top, double wide, double high, double open) {
        Palette palette = brush.palette();
        brush.box(left, top, wide, high, Palette.faint(palette.soft(), 0.12));
        brush.frame(left, top, wide, high, palette.soft(), 1.5);
        double hole = 0.7 * wide;
        double from = left + 0.15 * wide;
        brush.box(from, top + 0.25 * high, hole, 0.5 * high, Palette.faint(palette.straw(), 0.5));
        brush.frame(from, top + 0.25 * high, hole, 0.5 * high, palette.ink(), 1.5);
        double slide = from + open * hole;
        brush.box(slide, top + 0.18 * high, left + wide - slide, 0.64 * high, palette.paper());
        brush.box(slide, top + 0.18 * high, left + wide - slide, 0.64 * high, Palette.faint(palette.soft(), 0.45));
        brush.frame(slide, top + 0.18 * high, left + wide - slide, 0.64 * high, palette.ink(), 2);
    }

    /** A screen with the word for its figure. */
    private void terminal(Brush brush, double left, double top, double wide, double high) {
        Palette palette = brush.palette();
        brush.box(left, top, wide, high, Palette.faint(palette.soft(), 0.12));
        brush.frame(left, top, wide, high, palette.ink(), 2);
        brush.box(
                left + 0.07 * wide, top + 0.12 * high, 0.86 * wide, 0.76 * high, Palette.faint(palette.accent(), 0.1));
        brush.frame(left + 0.07 * wide, top + 0.12 * high, 0.86 * wide, 0.76 * high, palette.soft(), 1);
        String factor = words.text("picture.rateSetting.factor");
        Lettering bold = brush.body().heavy().in(palette.accent());
        if (brush.width(factor, bold) < 0.84 * wide) {
            brush.text(factor, left + wide / 2, top + high / 2, bold, TextAlignment.CENTER);
        }
    }

    private static void wire(Brush brush, double x1, double y1, double x2, double y2) {
        brush.polyline(
                new double[] {x1, x1, x2},
                new double[] {y1, y2, y2},
                brush.palette().soft(),
                2,
                false);
    }

    /** A hopper on two weigh cells. */
    private void weighed(Brush brush, double left, double top, double wide, double high) {
        Palette palette = brush.palette();
        new Parts(brush).hopper(left, top, wide, 0.72 * high, true);
        for (double x : new double[] {left + 0.12 * wide, left + 0.88 * wide}) {
            brush.line(x, top + 0.2 * high, x, top + 0.86 * high, palette.ink(), 2.5);
            brush.box(x - 0.1 * wide, top + 0.86 * high, 0.2 * wide, 0.1 * high, palette.accent());
        }
        brush.line(left, top + 0.98 * high, left + wide, top + 0.98 * high, palette.ink(), 2.5);
    }
}
