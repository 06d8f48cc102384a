package org.evenfall.wizard.picture;

import java.util.Comparator;
import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.TrayTestResult;
import org.evenfall.trays.EvennessVerdict;
import org.evenfall.trays.SpreadShape;
import org.evenfall.trays.Uniformity;

/**
 * What is under the bars of the trays: their places, the axis, the shape in words, which tests are compared.
 *
 * @param brush draws
 * @param words words
 * @param tests tests that can be read, oldest first, at least one
 */
record TrayBarsFoot(Brush brush, Sentences words, List<TrayTestResult> tests) {

    /** Height of all of it, px. */
    double high() {
        return ((shapeText().isEmpty() ? 3.1 : 4.4) + (tests.size() > 1 ? 1.3 : 0)) * brush.em();
    }

    private Uniformity last() {
        return before(0).evenness();
    }

    private TrayTestResult before(int back) {
        return tests.get(tests.size() - 1 - back);
    }

    /** The shape of the last test in words: the largest one that has a name; nothing where the field is even. */
    String shapeText() {
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
        return "picture.bars.shape." + mode.kind().publishedName() + (mode.amplitudePercent() > 0 ? ".more" : ".less");
    }

    /** Draws it under a floor. */
    void draw(double floor, Scale across, double left, double width) {
        double em = brush.em();
        places(floor, across);
        line(axis(width), floor + 2.1 * em, left, width, brush.note());
        String shape = shapeText();
        if (!shape.isEmpty()) {
            line(
                    shape,
                    floor + 3.4 * em,
                    left,
                    width,
                    brush.note().heavy().in(brush.palette().warn()));
        }
        if (tests.size() > 1) {
            line(
                    words.text(
                            tests.size() > 2 ? "picture.bars.comparedTwo" : "picture.bars.compared",
                            Arg.count(before(0).index() + 1L),
                            Arg.count(before(1).index() + 1L),
                            Arg.count(before(Math.min(2, tests.size() - 1)).index() + 1L)),
                    floor + (shape.isEmpty() ? 3.4 : 4.7) * em,
                    left,
                    width,
                    brush.note().in(brush.palette().ink()));
        }
    }

    private void line(String text, double y, double left, double width, Lettering lettering) {
        brush.within(text, (left + width) / 2, y, lettering, TextAlignment.CENTER, 0, width);
    }

    /** Metres under each tray, from the middle outwards, as many as have room. */
    private void places(double floor, Scale across) {
        List<Double> positions = last().positionsM();
        int middle = positions.size() / 2;
        double half = half(positions.get(middle));
        double centre = across.at(positions.get(middle));
        place(floor, positions.get(middle), centre);
        double free = centre - half;
        for (int i = middle - 1; i >= 0; i--) {
            double x = across.at(positions.get(i));
            if (x + half(positions.get(i)) < free) {
                place(floor, positions.get(i), x);
                free = x - half(positions.get(i));
            }
        }
        free = centre + half;
        for (int i = middle + 1; i < positions.size(); i++) {
            double x = across.at(positions.get(i));
            if (x - half(positions.get(i)) > free) {
                place(floor, positions.get(i), x);
                free = x + half(positions.get(i));
            }
        }
    }

    private void place(double floor, double metres, double x) {
        brush.text(place(metres), x, floor + 0.9 * brush.em(), brush.note(), TextAlignment.CENTER);
    }

    private double half(double metres) {
        return brush.width(place(metres), brush.note()) / 2 + 0.2 * brush.em();
    }

    private String axis(double width) {
        String whole = words.text("picture.bars.axis");
        return brush.width(whole, brush.note()) < width ? whole : words.text("picture.bars.axisShort");
    }

    private String place(double metres) {
        boolean whole = Math.abs(metres - Math.rint(metres)) < 0.05;
        return words.number(metres, whole ? 0 : 1, Unit.NONE);
    }
}
