package org.evenfall.wizard.picture;

import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** What one pass spreads left and right of the tramline; a second product over it, thinner. A model, and called so. */
public final class PatternPicture extends Picture {

    /**
     * One landing pattern.
     *
     * @param name what throws so
     * @param positionsM places across the travel, rising, negative left, m
     * @param amounts amount at each place, any one unit, not negative
     */
    public record Pattern(String name, List<Double> positionsM, List<Double> amounts) {

        /** Copies the lists. */
        public Pattern {
            positionsM = List.copyOf(positionsM);
            amounts = List.copyOf(amounts);
            if (positionsM.size() != amounts.size()) {
                throw new IllegalArgumentException(
                        "as many amounts as positions: " + positionsM.size() + ", " + amounts.size());
            }
        }
    }

    private List<Pattern> patterns = List.of();
    private @Nullable Double tramlineWidthM;

    /** Begins with nothing to show. */
    public PatternPicture(Sentences words) {
        super(words, 0.6);
        show(List.of(), null);
    }

    /** @param shown one or two; the first is filled */
    public void show(List<Pattern> shown, @Nullable Double widthM) {
        patterns =
                shown.stream().filter(pattern -> !pattern.amounts().isEmpty()).toList();
        tramlineWidthM = widthM;
        redraw(
                patterns.isEmpty()
                        ? words.text("picture.pattern.empty")
                        : words.text(
                                "picture.pattern.spoken",
                                Arg.text(patterns.get(0).name())));
    }

    @Override
    void draw(Brush brush, double width, double height) {
        if (patterns.isEmpty()) {
            nothingYet(brush, width, height, words.text("picture.pattern.empty"));
            return;
        }
        double em = brush.em();
        double reach = tramlineWidthM == null ? 1 : 0.75 * tramlineWidthM;
        double most = 1e-9;
        for (Pattern pattern : patterns) {
            for (int i = 0; i < pattern.amounts().size(); i++) {
                most = Math.max(most, pattern.amounts().get(i));
            }
            for (int i = 0; i < pattern.amounts().size(); i++) {
                if (pattern.amounts().get(i) > 0.01 * most) {
                    reach = Math.max(reach, Math.abs(pattern.positionsM().get(i)));
                }
            }
        }
        double head = (1.5 * patterns.size() + 0.4) * em;
        double floor = height - 3.9 * em;
        Scale across = new Scale(-1.05 * reach, 1.05 * reach, em, width - em);
        Scale up = new Scale(0, most, floor, head + 0.4 * em);
        if (tramlineWidthM != null) {
            tramlines(brush, across, tramlineWidthM, head, floor, width);
        }
        for (int i = 0; i < patterns.size(); i++) {
            curve(brush, across, up, patterns.get(i), i, width);
        }
        brush.onPaper(
                words.text("choice.Side.LEFT"),
                across.start(),
                floor - 0.9 * em,
                brush.note(),
                TextAlignment.LEFT,
                0,
                width);
        brush.onPaper(
                words.text("choice.Side.RIGHT"),
                across.end(),
                floor - 0.9 * em,
                brush.note(),
                TextAlignment.RIGHT,
                0,
                width);
        double below = new Marks(brush).axis(across, floor, words.text("picture.pattern.axis"), words);
        brush.within(
                words.text("picture.pattern.model"),
                width / 2,
                below + 0.6 * em,
                brush.note(),
                TextAlignment.CENTER,
                0,
                width);
    }

    private void tramlines(Brush brush, Scale across, double widthM, double head, double floor, double width) {
        double em = brush.em();
        brush.line(across.at(0), head, across.at(0), floor, brush.palette().soft(), 1);
        for (double side : new double[] {-0.5, 0.5}) {
            double x = across.at(side * widthM);
            brush.dashed(x, head, x, floor, brush.palette().soft(), 1);
        }
        brush.onPaper(
                words.text("picture.pattern.halfway", Arg.number(widthM / 2, 0, Unit.M)),
                across.at(widthM / 2),
                head + 0.5 * em,
                brush.note(),
                TextAlignment.CENTER,
                0,
                width);
    }

    private void curve(Brush brush, Scale across, Scale up, Pattern pattern, int index, double width) {
        Color colour = index == 0 ? brush.palette().straw() : brush.palette().accent();
        int n = pattern.amounts().size();
        double[] x = new double[n];
        double[] y = new double[n];
        double[] areaX = new double[n + 2];
        double[] areaY = new double[n + 2];
        for (int i = 0; i < n; i++) {
            x[i] = across.clamped(pattern.positionsM().get(i));
            y[i] = up.at(pattern.amounts().get(i));
            areaX[i + 1] = x[i];
            areaY[i + 1] = y[i];
        }
        areaX[0] = x[0];
        areaY[0] = up.start();
        areaX[n + 1] = x[n - 1];
        areaY[n + 1] = up.start();
        if (index == 0) {
            brush.shape(areaX, areaY, Palette.faint(colour, 0.3));
        }
        brush.polyline(x, y, colour, index == 0 ? 2.5 : 2, index > 0);
        name(brush, up, pattern.name(), x, y, index, width, colour);
    }

    /** The name above, with a thin line to its own curve: the first from the left, the second from the right. */
    private static void name(
            Brush brush, Scale up, String name, double[] x, double[] y, int index, double width, Color colour) {
        double em = brush.em();
        double knee = up.at(0.45 * up.to());
        int at = index == 0 ? 0 : x.length - 1;
        while (at >= 0 && at < x.length - 1 + index && at > index - 1 && y[at] > knee) {
            at += index == 0 ? 1 : -1;
        }
        at = Math.max(0, Math.min(x.length - 1, at));
        double line = (0.8 + 1.4 * index) * em;
        double anchor = index == 0 ? Math.min(x[at], width / 2 - em) : Math.max(x[at], width / 2 + em);
        brush.line(anchor, line + 0.7 * em, x[at], y[at], colour, 1);
        brush.within(
                name,
                index == 0 ? 0.4 * em : width - 0.4 * em,
                line,
                brush.note().heavy().in(colour),
                index == 0 ? TextAlignment.LEFT : TextAlignment.RIGHT,
                0.4 * em,
                width - 0.4 * em);
    }
}
