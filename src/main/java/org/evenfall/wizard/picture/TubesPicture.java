package org.evenfall.wizard.picture;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.trays.CvLimits;
import org.evenfall.trays.EvennessVerdict;
import org.evenfall.trays.SpreadShape;
import org.evenfall.trays.Uniformity;

/**
 * The tubes side by side at their places across the tramline: the last test filled, up to two earlier ones as empty
 * glasses next to it; the mean as a line, 10 and 15 % off it as bands, the lowest and the highest in words.
 */
public final class TubesPicture extends Picture {

    private static final int COMPARED = 3;
    private static final double INNER_PERCENT = CvLimits.GOOD_PERCENT;
    private static final double OUTER_PERCENT = CvLimits.FIELD_PERCENT;

    private List<TrayTestResult> tests = List.of();

    /** Begins with nothing to show. */
    public TubesPicture(Sentences words) {
        super(words, 0.75);
        show(List.of());
    }

    /** @param results tests that can be read, oldest first */
    public void show(List<TrayTestResult> results) {
        tests = List.copyOf(results);
        redraw(tests.isEmpty() ? words.text("picture.tubes.empty") : spoken());
    }

    private String spoken() {
        Uniformity last = last();
        return words.text(
                "picture.tubes.spoken",
                Arg.count(last.trays()),
                Arg.number(last.relativePercent().get(last.catches().lowestTray()), 0, Unit.PERCENT),
                Arg.number(last.relativePercent().get(last.catches().highestTray()), 0, Unit.PERCENT));
    }

    private Uniformity last() {
        return tests.get(tests.size() - 1).evenness();
    }

    @Override
    void draw(Brush brush, double width, double height) {
        if (tests.isEmpty()) {
            nothingYet(brush, width, height, words.text("picture.tubes.empty"));
            return;
        }
        double em = brush.em();
        List<TrayTestResult> compared = tests.subList(Math.max(0, tests.size() - COMPARED), tests.size());
        double highest = 120;
        for (TrayTestResult test : compared) {
            for (double relative : test.evenness().relativePercent()) {
                highest = Math.max(highest, relative);
            }
        }
        double foot = (shapeText().isEmpty() ? 3.1 : 4.4) + (tests.size() > 1 ? 1.3 : 0);
        Scale up = new Scale(0, 1.04 * highest, height - foot * em, 2.8 * em);
        double left = brush.width(
                        words.number(100 + OUTER_PERCENT, 0, Unit.PERCENT),
                        brush.note().heavy())
                + 0.7 * em;
        bands(brush, up, left, width);
        double slot = (width - left - 0.3 * em) / last().trays();
        for (int i = 0; i < last().trays(); i++) {
            double centre = left + (i + 0.5) * slot;
            slot(brush, up, compared, i, centre, slot);
        }
        shape(brush, up, left, slot, compared.size());
        extremes(brush, up, left, slot, width);
        beneath(brush, up.start(), left, slot, width);
    }

    private void bands(Brush brush, Scale up, double left, double width) {
        Palette palette = brush.palette();
        double em = brush.em();
        double wide = width - left;
        double outer = up.at(100 + OUTER_PERCENT);
        double inner = up.at(100 + INNER_PERCENT);
        brush.box(left, outer, wide, up.length(2 * OUTER_PERCENT), Palette.faint(palette.good(), 0.1));
        brush.box(left, inner, wide, up.length(2 * INNER_PERCENT), Palette.faint(palette.good(), 0.16));
        brush.line(left, up.at(100), width, up.at(100), palette.good(), 2);
        double free = Double.POSITIVE_INFINITY;
        for (double value :
                new double[] {100, 100 + OUTER_PERCENT, 100 - OUTER_PERCENT, 100 + INNER_PERCENT, 100 - INNER_PERCENT, 0
                }) {
            double y = up.at(value);
            double apart = Math.abs(value - 100) == INNER_PERCENT
                    ? OUTER_PERCENT - INNER_PERCENT
                    : Math.abs(value - 100) == OUTER_PERCENT ? OUTER_PERCENT : 100;
            if (up.length(apart) > 1.05 * em) {
                brush.text(
                        words.number(value, 0, Unit.PERCENT),
                        left - 0.4 * em,
                        y,
                        value == 100 ? brush.note().heavy().in(palette.good()) : brush.note(),
                        TextAlignment.RIGHT);
            }
            free = y;
        }
        brush.line(left, free, width, free, palette.ink(), 1);
    }

    private void slot(Brush brush, Scale up, List<TrayTestResult> compared, int i, double centre, double slot) {
        Palette palette = brush.palette();
        double em = brush.em();
        int glasses = compared.size();
        double glass = glass(brush, slot, glasses);
        for (int k = 0; k < glasses; k++) {
            Uniformity evenness = compared.get(k).evenness();
            if (i >= evenness.relativePercent().size()) {
                continue;
            }
            boolean now = k == glasses - 1;
            double relative = evenness.relativePercent().get(i);
            double x = centre - glasses * glass / 2 + k * glass;
            double level = up.at(relative);
            double inset = Math.max(1, 0.06 * glass);
            Color colour = now ? palette.straw() : palette.soft();
            if (now) {
                brush.box(
                        x + inset, level, glass - 2 * inset, up.start() - level, Palette.faint(palette.straw(), 0.75));
            } else {
                brush.box(x + inset, level, glass - 2 * inset, up.start() - level, Palette.faint(palette.soft(), 0.16));
                brush.line(x + inset, level, x + glass - inset, level, colour, 1.5);
            }
            if (glass < 0.9 * em) {
                continue;
            }
            brush.polyline(
                    new double[] {x + inset, x + inset, x + glass - inset, x + glass - inset},
                    new double[] {up.end(), up.start(), up.start(), up.end()},
                    now ? palette.ink() : palette.line(),
                    1,
                    false);
        }
    }

    /** The shape that is significant, as a line over the tubes of the last test. */
    private void shape(Brush brush, Scale up, double left, double slot, int glasses) {
        List<Double> shape = last().shapes().significantPercent();
        if (shape.isEmpty() || shapeText().isEmpty()) {
            return;
        }
        // over the filled tube, which is the last of each group
        double aside = (glasses - 1) * glass(brush, slot, glasses) / 2;
        double[] x = IntStream.range(0, shape.size())
                .mapToDouble(i -> left + (i + 0.5) * slot + aside)
                .toArray();
        double[] y = shape.stream().mapToDouble(up::at).toArray();
        brush.polyline(x, y, brush.palette().paper(), 5, false);
        brush.polyline(x, y, brush.palette().warn(), 3, false);
    }

    /** That shape in words: the largest one that has a name; nothing where the field is even. */
    private String shapeText() {
        if (last().verdict() == EvennessVerdict.EVEN) {
            return "";
        }
        return last().shapes().shapes().stream()
                .filter(SpreadShape::significant)
                .filter(mode -> words.has(shapeKey(mode)))
                .max(Comparator.comparingDouble(mode -> Math.abs(mode.amplitudePercent())))
                .map(mode -> words.text(shapeKey(mode), Arg.number(Math.abs(mode.amplitudePercent()), 0, Unit.PERCENT)))
                .orElse("");
    }

    private static String shapeKey(SpreadShape mode) {
        return "picture.tubes.shape." + mode.kind().publishedName() + (mode.amplitudePercent() > 0 ? ".more" : ".less");
    }

    private static double glass(Brush brush, double slot, int glasses) {
        return Math.min(2.4 * brush.em(), 0.82 * slot / glasses);
    }

    /** Lowest and highest of the last test, in words at their level. */
    private void extremes(Brush brush, Scale up, double left, double slot, double width) {
        Uniformity last = last();
        mark(brush, up, left, slot, width, last.catches().lowestTray(), "picture.tubes.lowest", false);
        mark(brush, up, left, slot, width, last.catches().highestTray(), "picture.tubes.highest", true);
    }

    private void mark(
            Brush brush, Scale up, double left, double slot, double width, int tray, String key, boolean above) {
        double em = brush.em();
        double relative = last().relativePercent().get(tray);
        double y = above ? 0.8 * em : 2 * em;
        double x = left + (tray + 0.5) * slot;
        brush.line(x, y + 0.6 * em, x, up.at(relative) - 2, brush.palette().ink(), 1);
        brush.onPaper(
                words.text(key, Arg.number(relative, 0, Unit.PERCENT)),
                x,
                y,
                brush.note().heavy().in(brush.palette().ink()),
                TextAlignment.CENTER,
                left,
                width - 0.2 * em);
    }

    private void beneath(Brush brush, double floor, double left, double slot, double width) {
        double em = brush.em();
        List<Double> positions = last().positionsM();
        double widest = IntStream.range(0, positions.size())
                .mapToDouble(i -> brush.width(place(positions.get(i)), brush.note()))
                .max()
                .orElse(0);
        int each = (int) Math.max(1, Math.ceil((widest + 0.4 * em) / slot));
        int middle = positions.size() / 2;
        for (int i = 0; i < positions.size(); i++) {
            if (Math.abs(i - middle) % each == 0) {
                brush.text(
                        place(positions.get(i)),
                        left + (i + 0.5) * slot,
                        floor + 0.9 * em,
                        brush.note(),
                        TextAlignment.CENTER);
            }
        }
        brush.within(
                axis(brush, width), (left + width) / 2, floor + 2.1 * em, brush.note(), TextAlignment.CENTER, 0, width);
        String shape = shapeText();
        if (!shape.isEmpty()) {
            brush.within(
                    shape,
                    (left + width) / 2,
                    floor + 3.4 * em,
                    brush.note().heavy().in(brush.palette().warn()),
                    TextAlignment.CENTER,
                    0,
                    width);
        }
        if (tests.size() > 1) {
            brush.within(
                    words.text(
                            tests.size() > 2 ? "picture.tubes.comparedTwo" : "picture.tubes.compared",
                            Arg.count(last(0).index() + 1L),
                            Arg.count(last(1).index() + 1L),
                            Arg.count(last(Math.min(2, tests.size() - 1)).index() + 1L)),
                    (left + width) / 2,
                    floor + (shape.isEmpty() ? 3.4 : 4.7) * em,
                    brush.note().in(brush.palette().ink()),
                    TextAlignment.CENTER,
                    0,
                    width);
        }
    }

    private String axis(Brush brush, double width) {
        String whole = words.text("picture.tubes.axis");
        return brush.width(whole, brush.note()) < width ? whole : words.text("picture.tubes.axisShort");
    }

    private TrayTestResult last(int before) {
        return tests.get(tests.size() - 1 - before);
    }

    private String place(double metres) {
        boolean whole = Math.abs(metres - Math.rint(metres)) < 0.05;
        return words.number(metres, whole ? 0 : 1, Unit.NONE);
    }
}
