package org.evenfall.wizard.picture;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.evenfall.finding.Arg;
import org.evenfall.finding.Sentences;
import org.evenfall.quantity.Unit;
import org.evenfall.trays.CvLimits;
import org.jspecify.annotations.Nullable;

/**
 * Bars at the true places of the trays, with the mean and the bands of 10 and 15 % round it.
 *
 * @param brush draws
 * @param across metres from the tramline
 * @param up height of a bar
 * @param bar room of one bar, px
 */
record BarsAcross(Brush brush, Scale across, Scale up, double bar) {

    /** A bar is so much narrower than its room. */
    private static final double SHARE = 0.88;

    /** Bars between the trays at these places, so wide that the two closest keep apart. */
    static BarsAcross of(Brush brush, List<List<Double>> placesM, double left, double right, Scale up) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (List<Double> places : placesM) {
            for (double place : places) {
                low = Math.min(low, place);
                high = Math.max(high, place);
            }
        }
        int last = placesM.get(placesM.size() - 1).size();
        // half a gap more at each end
        double room = Math.max(0.1, 0.6 * (high - low) / Math.max(1, last - 1));
        Scale across = new Scale(low - room, high + room, left, right);
        double closest = 3 * brush.em() * placesM.size();
        for (List<Double> places : placesM) {
            for (int i = 1; i < places.size(); i++) {
                closest = Math.min(closest, across.length(places.get(i) - places.get(i - 1)));
            }
        }
        return new BarsAcross(brush, across, up, Math.max(1, 0.8 * closest / placesM.size()));
    }

    /** A word at the level of one value. */
    record Level(double value, String word) {}

    /** The mean and the limits of the bands round it, in words. */
    static List<Level> levels(double mean, Sentences words) {
        List<Level> levels = new ArrayList<>();
        levels.add(new Level(mean, words.text("picture.bars.mean")));
        for (double percent : new double[] {CvLimits.FIELD_PERCENT, CvLimits.GOOD_PERCENT}) {
            Arg off = Arg.number(percent, 0, Unit.PERCENT);
            levels.add(new Level(mean * (1 + percent / 100), words.text("picture.bars.above", off)));
            levels.add(new Level(mean * (1 - percent / 100), words.text("picture.bars.below", off)));
        }
        return levels;
    }

    /** Width of these words with a gap, px. */
    static double levelsWide(Brush brush, Sentences words) {
        return 0.6 * brush.em()
                + levels(1, words).stream()
                        .mapToDouble(
                                level -> brush.width(level.word(), brush.note().heavy()))
                        .max()
                        .orElse(0);
    }

    /** The bands round a mean, from one place on the screen to another. */
    void bands(double mean, double left, double right) {
        Color good = brush.palette().good();
        double outer = mean * CvLimits.FIELD_PERCENT / 100;
        double inner = mean * CvLimits.GOOD_PERCENT / 100;
        brush.box(left, up.at(mean + outer), right - left, up.length(2 * outer), Palette.faint(good, 0.1));
        brush.box(left, up.at(mean + inner), right - left, up.length(2 * inner), Palette.faint(good, 0.16));
    }

    /** The mean in words at its level and, where there is room, each further level; the first is the mean. */
    void levels(List<Level> levels, double x, TextAlignment align) {
        List<Double> used = new ArrayList<>();
        for (Level level : levels) {
            double y = up.at(level.value());
            if (used.stream().allMatch(other -> Math.abs(other - y) > 1.05 * brush.em())) {
                Lettering lettering =
                        used.isEmpty() ? brush.note().heavy().in(brush.palette().good()) : brush.note();
                brush.text(level.word(), x, y, lettering, align);
                used.add(y);
            }
        }
    }

    /** The line of the mean. */
    void mean(double mean, double left, double right) {
        brush.line(left, up.at(mean), right, up.at(mean), brush.palette().good(), 1.5);
    }

    /** The line at the foot of all bars. */
    void floor(double left, double right) {
        brush.line(left, up.start(), right, up.start(), brush.palette().ink(), 1);
    }

    /** One bar; its middle so many pixels from its place. */
    void bar(double placeM, double value, double aside, Color fill, @Nullable Color frame) {
        double x = across.at(placeM) + aside - SHARE / 2 * bar;
        double level = up.at(value);
        brush.box(x, level, SHARE * bar, up.start() - level, fill);
        if (frame != null) {
            brush.frame(x, level, SHARE * bar, up.start() - level, frame, 1);
        }
    }

    /** An open place: a low outline that has no value. */
    void open(double placeM, Color colour) {
        double x = across.at(placeM) - SHARE / 2 * bar;
        double right = x + SHARE * bar;
        double top = up.start() - 1.6 * brush.em();
        brush.polyline(
                new double[] {x, x, right, right}, new double[] {up.start(), top, top, up.start()}, colour, 1.2, true);
    }
}
