package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.Uniformity;

/**
 * The trays of one test as bars in percent of their mean, with the mean, the bands and their numbers.
 *
 * @param brush draws
 * @param words words
 * @param evenness the test
 */
record PercentBars(Brush brush, Sentences words, Uniformity evenness) {

    private static final double MEAN = 100;

    /** Height under the bars, em. */
    private static final double FOOT_EM = 3.1;

    /** Draws them between two heights. */
    void draw(double width, double top, double foot) {
        double em = brush.em();
        double highest = 1.2 * MEAN;
        for (double relative : evenness.relativePercent()) {
            highest = Math.max(highest, relative);
        }
        Scale up = new Scale(0, highest, foot - FOOT_EM * em, top + 1.4 * em);
        double left = BarsAcross.levelsWide(brush, words) + 0.1 * em;
        double right = width - 0.4 * em;
        BarsAcross bars = BarsAcross.of(brush, List.of(evenness.positionsM()), left, right, up);
        bars.bands(MEAN, left, right);
        bars.levels(BarsAcross.levels(MEAN, words), left - 0.4 * em, TextAlignment.RIGHT);
        List<BarTops.Top> tops = new ArrayList<>();
        for (int i = 0; i < evenness.trays(); i++) {
            double relative = evenness.relativePercent().get(i);
            double place = evenness.positionsM().get(i);
            bars.bar(place, relative, 0, Palette.faint(brush.palette().straw(), 0.75), null);
            tops.add(new BarTops.Top(place, relative, words.number(relative, 0, Unit.NONE)));
        }
        bars.mean(MEAN, left, right);
        bars.floor(left, right);
        BarTops numbers = new BarTops(bars, tops);
        // the furthest from the mean first
        tops.stream()
                .sorted(Comparator.comparingDouble(one -> -Math.abs(one.value() - MEAN)))
                .forEach(one -> numbers.number(
                        one, brush.note().heavy().in(brush.palette().ink())));
        TrayPlaces places = new TrayPlaces(brush, words, evenness.positionsM());
        places.draw(up.start(), bars.across());
        places.axis(up.start(), width, words.text("picture.verdict.axis"), words.text("picture.verdict.axisShort"));
    }
}
