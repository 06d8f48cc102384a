package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.machine.FlowPoint;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** The opening table as points on two axes, with the line through them. */
public final class OpeningTablePicture extends Picture {

    private List<FlowPoint> points = List.of();
    private @Nullable Double densityKgPerL;

    /** Begins with nothing to show. */
    public OpeningTablePicture(Sentences words) {
        super(words, 0.9);
        show(List.of(), null);
    }

    /**
     * Draws this table.
     *
     * @param openings lowest opening first, all outlets together
     * @param tableDensityKgPerL bulk density that the table is for; null where it is not known
     */
    public void show(List<FlowPoint> openings, @Nullable Double tableDensityKgPerL) {
        points = List.copyOf(openings);
        densityKgPerL = tableDensityKgPerL;
        redraw(
                points.isEmpty()
                        ? words.text("picture.openings.empty")
                        : words.text(
                                "picture.openings.spoken",
                                Arg.count(points.size()),
                                Arg.number(points.get(0).kgPerMin(), 0, Unit.NONE),
                                Arg.number(last().kgPerMin(), 0, Unit.KG_PER_MIN)));
    }

    private FlowPoint last() {
        return points.get(points.size() - 1);
    }

    private String sentence() {
        return densityKgPerL == null
                ? words.text("picture.openings.noDensity")
                : words.text("picture.openings.density", Arg.number(densityKgPerL, 2, Unit.KG_PER_L));
    }

    @Override
    void draw(Brush brush, double width, double full) {
        if (points.isEmpty()) {
            nothingYet(brush, width, full, words.text("picture.openings.empty"));
            return;
        }
        double em = brush.em();
        Palette palette = brush.palette();
        double height = new Caption(sentence()).draw(brush, width, full);
        double most = points.stream().mapToDouble(FlowPoint::kgPerMin).max().orElse(1);
        double high = Math.min(height - 5.4 * em, 0.8 * width);
        double floor = (height + high) / 2 - 0.6 * em;
        double left = brush.width(words.number(most, 0, Unit.NONE), brush.note()) + 1.2 * em;
        Scale across = new Scale(0, 1.06 * Math.max(last().opening(), 1e-3), left, width - 1.2 * em);
        Scale up = new Scale(0, 1.08 * Math.max(most, 1e-3), floor, floor - high);
        brush.within(
                words.text("picture.openings.flow"),
                0.4 * em,
                up.end() - 1.2 * em,
                brush.body(),
                TextAlignment.LEFT,
                0.4 * em,
                width);
        Marks marks = new Marks(brush);
        marks.upAxis(up, left, words);
        marks.axis(across, floor, words.text("picture.openings.opening"), words);
        double[] x = points.stream().mapToDouble(p -> across.at(p.opening())).toArray();
        double[] y = points.stream().mapToDouble(p -> up.at(p.kgPerMin())).toArray();
        if (x.length > 1) {
            brush.polyline(x, y, palette.accent(), 2, false);
        }
        for (int i = 0; i < x.length; i++) {
            marks.disc(x[i], y[i], 0.35 * em, palette.accent());
        }
        brush.onPaper(
                words.number(last().kgPerMin(), 0, Unit.KG_PER_MIN),
                x[x.length - 1] - 0.8 * em,
                y[y.length - 1],
                brush.body().heavy().in(palette.accent()),
                TextAlignment.RIGHT,
                left + 0.4 * em,
                width - 0.3 * em);
    }
}
