package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javafx.scene.paint.Color;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.setup.entry.Condition;

/** A heap of free-flowing, of slightly damp and of caked product; the one that was chosen is emphasised. */
public final class ConditionPicture extends Picture {

    private Condition condition = Condition.UNANSWERED;

    /** Begins with nothing chosen. */
    public ConditionPicture(Sentences words) {
        super(words, 1.05);
        show(Condition.UNANSWERED);
    }

    /** Emphasises this condition. */
    public void show(Condition chosen) {
        condition = chosen;
        redraw(
                condition == Condition.UNANSWERED
                        ? words.text("picture.condition.empty")
                        : words.text("picture.condition.chosen", Arg.text(caption(condition))));
    }

    private String caption(Condition one) {
        return words.text(
                switch (one) {
                    case FREE_FLOWING, UNANSWERED -> "picture.condition.free";
                    case SLIGHTLY_DAMP -> "picture.condition.damp";
                    case CAKED -> "picture.condition.caked";
                });
    }

    @Override
    void draw(Brush brush, double width, double full) {
        double height = condition == Condition.UNANSWERED
                ? new Caption(words.text("picture.condition.empty")).draw(brush, width, full)
                : full;
        List<Panels.Panel> panels = new ArrayList<>();
        for (Condition one : List.of(Condition.FREE_FLOWING, Condition.SLIGHTLY_DAMP, Condition.CAKED)) {
            boolean chosen = one == condition;
            boolean open = condition == Condition.UNANSWERED;
            Lettering lettering = chosen
                    ? brush.body().heavy().in(brush.palette().accent())
                    : open ? brush.body() : brush.body().in(brush.palette().soft());
            panels.add(new Panels.Panel(caption(one), lettering, (left, top, wide, high) -> {
                Color colour = chosen || open
                        ? brush.palette().straw()
                        : brush.palette().soft();
                heap(brush, one, new Box(left, top, wide, high), colour);
                if (chosen) {
                    double edge = 0.35 * brush.em();
                    double free = 0.14 * high;
                    brush.frame(
                            left - edge,
                            top + free - edge,
                            wide + 2 * edge,
                            high - free + 2 * edge,
                            brush.palette().accent(),
                            2.5);
                }
            }));
        }
        new Panels(brush, panels).draw(width, height);
    }

    private record Box(double left, double top, double wide, double high) {}

    private static void heap(Brush brush, Condition one, Box box, Color colour) {
        double foot = box.top() + 0.94 * box.high();
        brush.line(
                box.left(), foot, box.left() + box.wide(), foot, brush.palette().ink(), 1.5);
        switch (one) {
            case FREE_FLOWING, UNANSWERED -> loose(brush, box, foot, 0.32, 0.48, colour, 0);
            case SLIGHTLY_DAMP -> loose(brush, box, foot, 0.62, 0.38, colour, 0.6);
            case CAKED -> lumps(brush, box, foot, colour);
        }
    }

    /**
     * A heap of granules.
     *
     * @param slope height over half the width at the foot
     * @param half half its width, share of the box
     * @param cling how far granules hang together in clumps, 0 to 1
     */
    private static void loose(
            Brush brush, Box box, double foot, double slope, double half, Color colour, double cling) {
        double radius = Math.max(1.6, 0.026 * Math.min(box.wide(), 1.4 * box.high()));
        double wide = half * Math.min(box.wide(), 1.5 * box.high());
        double peak = 2 * slope * wide;
        double middle = box.left() + box.wide() / 2;
        Random shape = new Random(3);
        for (double up = radius; up < peak; up += 1.8 * radius) {
            double here = wide * (1 - up / peak);
            for (double x = -here; x <= here; x += 2.1 * radius) {
                if (cling > 0 && shape.nextDouble() < 0.25 * cling) {
                    continue;
                }
                double aside = (shape.nextDouble() - 0.5) * radius;
                double more = cling > 0 && shape.nextDouble() < 0.3 * cling ? 1.6 : 1;
                brush.oval(middle + x + aside, foot - up, more * radius, more * radius, Palette.faint(colour, 0.65));
            }
        }
    }

    /** Lumps with edges, and little that is loose. */
    private static void lumps(Brush brush, Box box, double foot, Color colour) {
        double unit = 0.5 * Math.min(box.wide(), 1.4 * box.high());
        double middle = box.left() + box.wide() / 2;
        double[][] lumps = {{-0.5, 0.3, 0.34}, {0.42, 0.26, 0.3}, {-0.02, 0.34, 0.26}, {0.02, 0.78, 0.3}};
        Random shape = new Random(9);
        for (double[] lump : lumps) {
            double[] x = new double[7];
            double[] y = new double[7];
            for (int i = 0; i < x.length; i++) {
                double angle = 2 * Math.PI * i / x.length;
                double radius = unit * lump[2] * (0.85 + 0.35 * shape.nextDouble());
                x[i] = middle + unit * lump[0] + radius * Math.cos(angle);
                y[i] = Math.min(foot - 1, foot - unit * lump[1] + radius * Math.sin(angle));
            }
            brush.shape(x, y, brush.palette().paper());
            brush.shape(x, y, Palette.faint(colour, 0.4));
            brush.outline(x, y, colour, 1.5);
        }
    }
}
