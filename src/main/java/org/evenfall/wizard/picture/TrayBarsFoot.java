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
        new TrayPlaces(brush, words, last().positionsM()).draw(floor, across);
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

    private String axis(double width) {
        String whole = words.text("picture.bars.axis");
        return brush.width(whole, brush.note()) < width ? whole : words.text("picture.bars.axisShort");
    }
}
